package org.amberyard.workbench.fields;

import java.util.List;
import org.amberyard.workbench.grid.CellRefusal;
import org.eclipse.emf.ecore.EObject;

/**
 * The rows that the lines of a block have become: one that is blank, or of which nothing was taken, adds none.
 *
 * @param first row that the first line was meant for
 * @param elements element of each line; null for a line that has not become one
 * @param rows elements of the table after the entry
 */
record BlockRows(int first, List<EObject> elements, List<EObject> rows) {

    /** Refusals of the lines, which were counted as if each had become a row, where they belong. */
    List<CellRefusal> place(List<CellRefusal> refused) {
        return refused.stream().map(this::place).toList();
    }

    private CellRefusal place(CellRefusal refusal) {
        int line = refusal.row() - first;
        int row = elements.get(line) == null ? -1 : rows.indexOf(elements.get(line));
        return row < 0 ? refusal.withLine(line) : refusal.inRow(row);
    }
}
