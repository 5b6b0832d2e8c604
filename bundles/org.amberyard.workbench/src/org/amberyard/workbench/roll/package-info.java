/** The dialog that rolls a study to a later base year. */
package org.amberyard.workbench.roll;
