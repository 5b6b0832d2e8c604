/**
 * A table that behaves like a sheet of a spreadsheet: type to edit, select blocks, copy and paste. It knows texts and
 * marks only; what they mean is the business of its {@link org.amberyard.workbench.grid.GridModel}.
 */
package org.amberyard.workbench.grid;
