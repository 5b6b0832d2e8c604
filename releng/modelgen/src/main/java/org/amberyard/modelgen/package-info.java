/** Generates the Java model of a study from its Ecore files, as a step of the build. */
package org.amberyard.modelgen;
