package org.amberyard.report.document;

import java.util.List;
import org.amberyard.charts.Chart;

/** What stands in a section. */
public sealed interface Block permits Block.Paragraph, Block.Bullets, Block.Caution, Block.Figure, DataTable {

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

    /**
     * A chart with its caption; its text alternative goes with it.
     *
     * @param chart the chart
     * @param caption caption
     * @param height height over width
     */
    record Figure(Chart chart, String caption, double height) implements Block {
        /** Width in chart units at which charts are drawn. */
        static final int WIDTH = 900;

        int chartHeight() {
            return (int) Math.round(WIDTH * height);
        }
    }
}
