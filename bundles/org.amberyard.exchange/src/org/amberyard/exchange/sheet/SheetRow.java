package org.amberyard.exchange.sheet;

import java.util.List;

/**
 * A row of a sheet in which something stands.
 *
 * @param number number of the row in the file, from 1
 * @param cells cells from the first column on; blank ones at the end may be missing
 */
public record SheetRow(int number, List<SheetCell> cells) {

    public SheetRow {
        cells = List.copyOf(cells);
    }

    /** The cell in a column, from 0; blank where the row has none. */
    public SheetCell cell(int column) {
        return column < cells.size() ? cells.get(column) : SheetCell.BLANK;
    }

    boolean isBlank() {
        return cells.stream().allMatch(SheetCell::isBlank);
    }
}
