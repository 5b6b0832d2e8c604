/** Colours, fonts and spacing of the window, in one place. */
package org.amberyard.workbench.look;
