package org.amberyard.workbench.grid;

/**
 * An order of the rows of a table.
 *
 * @param column name of the column that they are sorted by
 * @param ascending true for the least first
 */
public record SortOrder(String column, boolean ascending) {
}
