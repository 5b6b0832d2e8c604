/** Plans side by side, of this study and of another. */
package org.amberyard.workbench.compare;
