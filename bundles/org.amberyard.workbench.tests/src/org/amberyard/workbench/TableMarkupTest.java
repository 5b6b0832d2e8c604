package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import org.amberyard.report.ResultColumn;
import org.amberyard.report.ResultTable;
import org.amberyard.workbench.grid.TableMarkup;
import org.amberyard.workbench.views.ResultModel;
import org.junit.jupiter.api.Test;

class TableMarkupTest {
    private static final String TABLE = "<table border=\"1\" style=\"border-collapse:collapse\">";

    @Test
    void aBlockIsATableWithItsHeadings() {
        assertEquals(TABLE + "<tr><th>Bus &amp; route</th><th>mi</th></tr><tr><td>B01</td><td>1,234</td></tr></table>",
                TableMarkup.write(List.of(List.of("Bus & route", "mi"), List.of("B01", "1,234")), true));
    }

    @Test
    void wordsThatASpreadsheetWouldComputeAreMarkedAsWords() {
        for (Map.Entry<String, Boolean> cell : Map.of("=1+1", true, "@SUM(A1)", true, "-cmd", true, "-1,234.5", false, "-5", false,
                "B01", false).entrySet()) {
            boolean marked = TableMarkup.write(List.of(List.of(cell.getKey())), false).contains("mso-number-format:'\\@'");
            assertEquals(cell.getValue(), marked, cell.getKey());
        }
    }

    @Test
    void figuresCanBeTakenWithoutThousandsSeparators() {
        ResultColumn cost = new ResultColumn("cost", "Cost", "USD", ResultColumn.Type.MONEY, "Cost.");
        ResultModel model = new ResultModel(new ResultTable("t", "T", List.of(cost), List.of(List.of(1_234_567.25))));
        assertEquals(String.format("%,.2f", 1_234_567.25), model.fullText(0, 0));
        assertEquals(String.format("%.2f", 1_234_567.25), model.plainText(0, 0));
    }
}
