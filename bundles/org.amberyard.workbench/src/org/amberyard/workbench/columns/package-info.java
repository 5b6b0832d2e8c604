/** Which columns of a table are shown, in which order: chosen by the user and kept for the next start. */
package org.amberyard.workbench.columns;
