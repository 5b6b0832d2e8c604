package org.amberyard.report.papers;

import java.util.List;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.report.ResultTable;
import org.amberyard.report.document.Block;
import org.amberyard.report.document.CellFormat;
import org.amberyard.report.document.DataTable;
import org.amberyard.report.document.TableBuilder;

/** All emission factors as pages have them: those of a source, a unit and a cause in a line, each source once. */
final class FactorPaper {
    static final String TABLE = "emission_factors";
    private static final String PLACEHOLDER = "placeholder";

    private FactorPaper() {
    }

    /** @param whole the table with a row for each factor, as it is for programs */
    static Block of(PaperInput in, ResultTable table, DataTable whole) {
        String us = in.system() == UnitSystem.US ? "_us" : "";
        List<Together> rows = Together.of(ResultLine.all(table, in.plan().name()).stream(),
                l -> List.of(l.text("group"), l.text("cause"), l.text("unit" + us), l.text("used"), l.text("region"), quality(l),
                        SourceWords.of(l.text("citation")), l.text("date")),
                l -> (l.text("pollutant") + " " + CellFormat.VALUE.print(InputFigure.orWords(l, "value" + us))).strip());
        DataTable grouped = new TableBuilder<Together>(whole.name(), whole.title()).text("Holds for", t -> t.key(0))
                .text("By", t -> t.key(1)).text("Factors", Together::words).text("Unit", 0.8, t -> t.key(2))
                .text("Took part", 0.5, t -> t.key(3)).text("Region", 0.8, t -> t.key(4)).text("Quality", 0.9, t -> t.key(5))
                .text("Source", t -> t.key(6)).text("Date", 0.8, t -> t.key(7))
                .note("Quality “placeholder”: figures that rest on it are not for submission. The workbook (XLSX) of this document has each "
                        + "factor in a row of its own, in metric and in US units.")
                .mark(whole.mark()).of(rows);
        return Block.Condensed.of(whole, Block.Condensed.of(grouped).onPaper());
    }

    /** A factor without a source stands in as one that is called a placeholder does. */
    private static String quality(ResultLine line) {
        String quality = line.text("quality");
        return line.text(PLACEHOLDER).equals("yes") && !quality.equals(PLACEHOLDER) ? quality + ", " + PLACEHOLDER : quality;
    }
}
