/** Charts on a canvas: painted in the background, with exact figures under the pointer. */
package org.amberyard.workbench.charts;
