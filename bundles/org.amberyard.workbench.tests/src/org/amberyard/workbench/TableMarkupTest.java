package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import org.amberyard.report.ResultColumn;
import org.amberyard.report.ResultTable;
import org.amberyard.workbench.columns.ArrangedModel;
import org.amberyard.workbench.grid.GridModel;
import org.amberyard.workbench.grid.TableMarkup;
import org.amberyard.workbench.grid.TableMarkup.Cell;
import org.amberyard.workbench.views.ResultModel;
import org.junit.jupiter.api.Test;

class TableMarkupTest {
    private static final String TABLE = "<table xmlns:x=\"urn:schemas-microsoft-com:office:excel\" border=\"1\" style=\"border-collapse:collapse\">";

    @Test
    void aBlockIsATableWithItsHeadings() {
        assertEquals(TABLE + "<tr><th>Bus &amp; route</th><th>mi</th></tr><tr><td>B01</td><td>1,234</td></tr></table>",
                TableMarkup.write(List.of(List.of(Cell.of("Bus & route"), Cell.of("mi")), List.of(Cell.of("B01"), Cell.of("1,234"))), true));
    }

    @Test
    void wordsThatASpreadsheetWouldComputeAreMarkedAsWords() {
        for (Map.Entry<String, Boolean> cell : Map.of("=1+1", true, "@SUM(A1)", true, "-cmd", true, "-1,234.5", false, "-5", false,
                "B01", false).entrySet()) {
            boolean marked = TableMarkup.write(List.of(List.of(Cell.of(cell.getKey()))), false).contains("mso-number-format:'\\@'");
            assertEquals(cell.getValue(), marked, cell.getKey());
        }
    }

    /** Read by LibreOffice 7.4: the cell then holds 19326.368, while a word processor shows 19,326. */
    @Test
    void figuresAreShownRoundedAndCountedWhole() {
        assertEquals(TABLE + "<tr><td x:num=\"19326.368\" sdval=\"19326.368\" sdnum=\"1033;\">19,326</td></tr></table>",
                TableMarkup.write(List.of(List.of(new Cell("19,326", "19326.368"))), false));
    }

    @Test
    void figuresCanBeTakenWithoutThousandsSeparators() {
        ResultColumn cost = new ResultColumn("cost", "Cost", "USD", ResultColumn.Type.MONEY, "Cost.");
        ResultModel model = new ResultModel(new ResultTable("t", "T", List.of(cost), List.of(List.of(1_234_567.25))));
        assertEquals(String.format("%,.2f", 1_234_567.25), model.fullText(0, 0));
        assertEquals(String.format("%.0f", 1_234_567.25), model.plainText(0, 0), "as it is shown");
        GridModel arranged = new ArrangedModel(model, "test");
        assertEquals(model.plainText(0, 0), arranged.plainText(0, 0), "whatever columns are shown");
    }
}
