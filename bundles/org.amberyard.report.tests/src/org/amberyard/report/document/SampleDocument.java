package org.amberyard.report.document;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.amberyard.charts.AnnualCostChart;
import org.amberyard.charts.Chart;
import org.amberyard.charts.ChartTheme;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.testsupport.SampleDistrict;

/** A document with every kind of block, hostile words among them. */
final class SampleDocument {
    static final String HOSTILE = "=HYPERLINK(\"http://x\",\"<b>&\")";
    static final int ROWS = 90;

    private SampleDocument() {
    }

    /** A line of the table. */
    private record Line(int number) {
        double cost() {
            return 1234.56 * number - 10_000;
        }
    }

    static Document of() {
        Chart chart = AnnualCostChart.of(SampleDistrict.evaluated(SampleDistrict.small()), UnitSystem.US, ChartTheme.light());
        List<Line> lines = IntStream.range(0, ROWS).mapToObj(Line::new).toList();
        DataTable table = new TableBuilder<Line>("T1: a/b", "Table 1. Figures & words")
                .text("Words", l -> l.number() == 0 ? HOSTILE : "line " + l.number())
                .year("Year", l -> OptionalInt.of(2026 + l.number()))
                .sum("Cost", "USD", CellFormat.WHOLE, Line::cost)
                .optional("Share", "", CellFormat.PERCENT, l -> l.number() == 1 ? OptionalDouble.empty()
                        : OptionalDouble.of(l.number() / 300.0))
                .toFill("Owner").note("A note.").mark("Not for submission: a sample.").of(lines);
        return new Document("sample", "Title & <title>", "About “this”", List.of(new Document.Fact("Plan", "A \"plan\"")),
                "Running \"line\" & more",
                "Not for submission: a sample.", List.of(
                        Section.of("First", new Block.Paragraph("Plain."), new Block.Paragraph("Strong.", true),
                                new Block.Bullets(List.of("One.", "Two.")), new Block.Caution("Careful."), new Block.Figure(chart,
                                        "Figure 1. Costs", 0.5)),
                        new Section("Wide", true, true, List.of(table)),
                        Section.of("Last", new Block.OnSheet(new DataTable("Long", "Table 2. Long", table.columns(), table.rows(),
                                List.of(), "")))));
    }
}
