package org.amberyard.exchange.sheet;

import java.util.List;
import java.util.Map;

/** Rows of a log that say the same in every column. */
final class RepeatedRow {
    private RepeatedRow() {
    }

    /**
     * Number of a row, which must say something new.
     *
     * @param id column in which it is told
     * @param known numbers of the rows before by what stands in them; the row is added
     */
    static int hold(MappedRow row, String id, Map<List<SheetCell>, Integer> known) throws CellFault {
        Integer first = known.putIfAbsent(row.cells(), row.number());
        if (first != null) {
            throw row.wrong(id, "The row says the same as row " + first + " in every column and would count twice; delete one of them, or tell them "
                    + "apart by a number.");
        }
        return row.number();
    }
}
