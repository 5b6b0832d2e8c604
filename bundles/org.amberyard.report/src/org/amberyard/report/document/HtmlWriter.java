package org.amberyard.report.document;

import java.nio.charset.StandardCharsets;
import org.amberyard.charts.ChartExport;

/** Writes a document as a page for a browser. It holds everything, charts as vectors, and loads nothing. */
final class HtmlWriter {
    private HtmlWriter() {
    }

    static byte[] bytes(Document document) {
        return HtmlText.page(document, HtmlWriter::svg).getBytes(StandardCharsets.UTF_8);
    }

    private static String svg(Block.Figure figure) {
        String svg = ChartExport.svg(figure.chart(), Block.Figure.WIDTH, figure.chartHeight());
        return svg.substring(svg.indexOf("<svg")).replaceFirst("<svg ",
                "<svg role=\"img\" aria-label=\"" + HtmlText.escaped(figure.chart().textAlternative()).replace("$", "\\$") + "\" ");
    }
}
