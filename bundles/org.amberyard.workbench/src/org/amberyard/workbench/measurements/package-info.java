/** What is made of measurements in the window. */
package org.amberyard.workbench.measurements;
