package org.amberyard.workbench.views;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.amberyard.report.ResultColumn;
import org.amberyard.report.ResultColumn.Type;
import org.amberyard.report.ResultTable;
import org.junit.jupiter.api.Test;

class ResultModelTest {

    /** Spreadsheets take the minus of print for words; a dash in words stays what it is. */
    @Test
    void figuresAreReadWithTheMinusOfPrintAndCopiedWithThatOfKeyboards() {
        ResultModel model = new ResultModel(new ResultTable("changes", "Changes", List.of(new ResultColumn("note", "Note", "", Type.TEXT, ""),
                new ResultColumn("now", "Now", "", Type.FIGURE, ""), new ResultColumn("kwh", "Energy", "kWh", Type.NUMBER, "")),
                List.of(List.of("a − b", "-5 °F", -7.0))));
        assertEquals(List.of("a − b", "−5 °F", "−7.00"), List.of(model.text(0, 0), model.text(0, 1), model.text(0, 2)));
        assertEquals(List.of("a − b", "-5 °F", "-7"), List.of(model.fullText(0, 0), model.fullText(0, 1), model.fullText(0, 2)));
    }
}
