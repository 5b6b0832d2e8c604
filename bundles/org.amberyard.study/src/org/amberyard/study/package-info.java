/** Evaluates a study: compiles the model into values, runs the stages and keeps what is still valid. */
package org.amberyard.study;
