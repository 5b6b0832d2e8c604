package org.amberyard.report.document;

import java.util.List;
import java.util.Locale;
import org.amberyard.charts.Chart;

/** What stands in a section. */
public sealed interface Block permits Block.Paragraph, Block.Bullets, Block.Caution, Block.Figure, Block.OnSheet, Block.Condensed, Block.Contents, DataTable {

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
     * A table of which pages say once what its rows repeat; all other formats have it whole.
     *
     * @param table the table
     * @param onPaper the same as pages have it, in one table or several
     * @param setting how its rows are set
     */
    record Condensed(DataTable table, List<DataTable> onPaper, RowSetting setting) implements Block {
        /** Lines that a page in landscape has for each line of an upright one. */
        private static final double LANDSCAPE_LINES = 0.6;

        public Condensed {
            onPaper = List.copyOf(onPaper);
        }

        /** With what its rows repeat below it. */
        public static Condensed of(DataTable table) {
            return of(table, List.of(CondensedTable.of(table)));
        }

        /** As pages have it, its rows set close. */
        public static Condensed of(DataTable table, List<DataTable> onPaper) {
            return new Condensed(table, onPaper, RowSetting.CLOSE);
        }

        /** As it is, its rows set close. */
        public static Condensed close(DataTable table) {
            return of(table, List.of(table));
        }

        /** With all its columns; long words that rows repeat below it. */
        public static Condensed cited(DataTable table) {
            return new Condensed(table, List.of(CondensedTable.cited(table)), RowSetting.OPEN);
        }

        /** True where it needs pages in landscape, or fewer of them than upright ones. */
        public boolean isWide(Paper paper) {
            return onPaper.stream().map(t -> new ColumnWidths(t, setting)).anyMatch(w -> !w.fit(paper.textWidth(false))
                    || LANDSCAPE_LINES * w.lines(paper.textWidth(false)) > w.lines(paper.textWidth(true)));
        }

        /** Lines that it takes on an upright page. */
        public int lines(Paper paper) {
            return onPaper.stream().mapToInt(t -> new ColumnWidths(t, setting).lines(paper.textWidth(false)) + t.notes().size()).sum();
        }
    }

    /** The headings of the document and the titles of its tables, each a way to its place. */
    record Contents() implements Block {
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
