package org.amberyard.workbench.views;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
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
        assertEquals(List.of("a − b", "−5 °F", "−7"), List.of(model.text(0, 0), model.text(0, 1), model.text(0, 2)));
        assertEquals(List.of("a − b", "-5 °F", "-7"), List.of(model.fullText(0, 0), model.fullText(0, 1), model.fullText(0, 2)));
    }

    private static List<String> shown(Type type, Double... figures) {
        ResultModel model = new ResultModel(new ResultTable("t", "T", List.of(new ResultColumn("c", "C", "", type, "")),
                Stream.of(figures).map(f -> List.<Object>of(f)).toList()));
        return IntStream.range(0, figures.length).mapToObj(row -> model.text(row, 0)).toList();
    }

    /** Three digits of the largest line a column up, but no price may become nothing; sums of bills have their cents. */
    @Test
    void figuresKeepTheDigitsThatTellThem() {
        assertEquals(List.of("1,235", "232", "5.2", "0.232", "0"), shown(Type.NUMBER, 1234.5678, 232.4, 5.2, 0.232, 1e-13));
        assertEquals(List.of("12.3", "5.2", "0.000312"), shown(Type.NUMBER, 12.345, 5.2, 0.00031234));
        assertEquals(List.of("4,263.33", "−15.10", "68.00"), shown(Type.MONEY, 4263.33, -15.1, 68.0));
        assertEquals(List.of("4,797,829", "651,402"), shown(Type.MONEY, 4_797_829.49, 651_401.6));
        assertEquals(List.of("67", "0"), shown(Type.NUMBER, 67.0, 0.0));
    }

    /** One large sum takes the cents from all sums of its table. */
    @Test
    void sumsOfATableHaveCentsTogether() {
        ResultModel model = new ResultModel(new ResultTable("t", "T", List.of(new ResultColumn("a", "A", "", Type.MONEY, ""),
                new ResultColumn("b", "B", "", Type.MONEY, "")), List.of(List.of(4_797_829.49, -4522.5), List.of(1.0, 0.0))));
        assertEquals(List.of("4,797,829", "−4,522"), List.of(model.text(0, 0), model.text(0, 1)));
    }

    /** Figures are looked for as in the tables of the study; what is no condition of a column is a word. */
    @Test
    void rowsAreFilteredByFigures() {
        ResultModel model = new ResultModel(new ResultTable("t", "T", List.of(new ResultColumn("note", "Note", "", Type.TEXT, ""),
                new ResultColumn("kwh", "Energy", "kWh", Type.NUMBER, "")), List.of(List.of("a<5", 12000.0), List.of("b", -7.0), List.of("c", 40.0))));
        assertEquals(List.of("a<5", "c"), shown(model, "energy>8"));
        assertEquals(List.of("a<5"), shown(model, "kwh>=12000"));
        assertEquals(List.of("b"), shown(model, "energy=-7 b"));
        assertEquals(List.of("a<5"), shown(model, "A<5"));
        assertEquals(List.of(), shown(model, "power>8"));
    }

    private static List<String> shown(ResultModel model, String words) {
        model.filter(words);
        return IntStream.range(0, model.rows()).mapToObj(row -> model.text(row, 0)).toList();
    }
}
