/** Rolls a study to a later base year. */
package org.amberyard.study.roll;
