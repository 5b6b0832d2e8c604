/** How the window is laid out: the purposes and their views. */
package org.amberyard.workbench.layout;
