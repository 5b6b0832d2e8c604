package org.amberyard.report.document;

import java.util.List;
import java.util.Locale;
import org.amberyard.charts.Chart;

/** What stands in a section. */
public sealed interface Block permits Block.Paragraph, Block.Bullets, Block.Caution, Block.Figure, Block.OnSheet, DataTable {

    /**
     * A paragraph.
     *
     * @param text its words
     * @param strong true for the sentence that must not be missed
     */
    record Paragraph(String text, boolean strong) implements Block {
        /** Plain words. */
        public Paragraph(String text) {
            this(text, false);
        }
    }

    /** A list of points. */
    record Bullets(List<String> items) implements Block {
        public Bullets {
            items = List.copyOf(items);
        }
    }

    /** Words in a frame that a reader must heed. */
    record Caution(String text) implements Block {
    }

    /** A table too long for paper: a workbook has it as a sheet, pages say so. */
    record OnSheet(DataTable table) implements Block {
        /** What pages say in its place. */
        String words() {
            return String.format(Locale.ROOT, "%s: %,d rows, in the workbook (XLSX) of this document.", table.title(), table.rows()
                    .size());
        }
    }

    /**
     * A chart with its caption; its text alternative goes with it.
     *
     * @param chart the chart
     * @param caption caption
     * @param height height over width
     */
    record Figure(Chart chart, String caption, double height) implements Block {
        /** Width in chart units at which charts are drawn. */
        static final int WIDTH = 780;

        int chartHeight() {
            return (int) Math.round(WIDTH * height);
        }
    }
}
