package org.amberyard.workbench.grid;

import java.util.List;
import org.eclipse.osgi.util.NLS;

/** Cells of a table that have refused what was entered, each with the text and the reason. */
final class RefusedModel extends ListModel<RefusedModel.Line> {
    private static final List<String> HEADERS = List.of(Messages.Refused_row, Messages.Refused_column, Messages.Refused_typed,
            Messages.Refused_why);

    /** A refusal in words that hold when the table has changed. */
    record Line(CellRefusal refusal, Object subject, List<String> texts) {
    }

    /** @param table the table as it is after the entry */
    RefusedModel(GridModel table, List<CellRefusal> refused) {
        super(HEADERS, refused.stream().map(r -> line(table, r)).toList());
    }

    private static Line line(GridModel table, CellRefusal refusal) {
        boolean there = refusal.hasRow();
        String row = there ? refusal.row() + 1 + "  " + table.text(refusal.row(), 0) : NLS.bind(Messages.Refused_line, refusal.lostLine() + 1);
        return new Line(refusal, there ? table.subject(refusal.row(), refusal.column()) : null,
                List.of(row, table.header(refusal.column()), refusal.typed(), refusal.getMessage()));
    }

    /** The refusal of a line. */
    CellRefusal refusal(int row) {
        return line(row).refusal();
    }

    /** What the cell of a line stands for; null where its row has not come to be. */
    Object of(int row) {
        return line(row).subject();
    }

    @Override
    public String text(int row, int column) {
        return line(row).texts().get(column);
    }
}
