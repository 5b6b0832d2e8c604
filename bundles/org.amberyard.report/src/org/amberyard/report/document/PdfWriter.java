package org.amberyard.report.document;

import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.extend.OutputDeviceGraphicsDrawer;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.render.DefaultObjectDrawerFactory;
import com.openhtmltopdf.util.XRLog;
import java.awt.Font;
import java.awt.geom.Rectangle2D;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.amberyard.charts.Chart;

/**
 * Writes a document as tagged PDF: headings, paragraphs, tables with their heads, and charts as vectors with their text
 * alternative. The font is embedded.
 */
final class PdfWriter {
    private static final String FONT = "Liberation Sans";
    /** Font that charts ask for; in a PDF it is the same as that of the text. */
    private static final String CHART_FONT = Font.SANS_SERIF;
    private static final String CHART_TYPE = "amberyard/chart";
    private static final int REGULAR = 400;
    private static final int BOLD = 700;

    private final Document document;
    private final Map<String, Block.Figure> figures = new HashMap<>();

    private PdfWriter(Document document) {
        this.document = document;
    }

    static byte[] bytes(Document document) throws IOException {
        return new PdfWriter(document).written();
    }

    private byte[] written() throws IOException {
        // What it says of itself goes to the error stream of the caller otherwise.
        XRLog.setLoggingEnabled(false);
        String html = HtmlText.source(document, this::placed);
        PdfRendererBuilder builder = new PdfRendererBuilder().usePdfUaAccessibility(true).withHtmlContent(html, null)
                .withProducer("Amberyard").useObjectDrawerFactory(charts()).useExternalResourceAccessControl((uri, type) -> false,
                        ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI);
        for (String family : List.of(FONT, CHART_FONT)) {
            font(builder, "Regular", family, REGULAR, FontStyle.NORMAL);
            font(builder, "Bold", family, BOLD, FontStyle.NORMAL);
            font(builder, "Italic", family, REGULAR, FontStyle.ITALIC);
        }
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
            renderer.layout();
            renderer.createPDFWithoutClosing();
            PdfLinks.describe(renderer.getPdfDocument());
            SteadyPdf.settle(renderer.getPdfDocument(), document.title(), html);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            renderer.getPdfDocument().save(out);
            return out.toByteArray();
        }
    }

    private static void font(PdfRendererBuilder builder, String cut, String family, int weight, FontStyle style) {
        builder.useFont(() -> PdfWriter.class.getResourceAsStream("fonts/LiberationSans-" + cut + ".ttf"), family, weight, style,
                true);
    }

    private String placed(Block.Figure figure) {
        String key = String.valueOf(figures.size());
        figures.put(key, figure);
        double width = document.paper().figureWidth();
        return String.format(Locale.ROOT, "<object type=\"%s\" data=\"%s\" style=\"width:%.3fpt;height:%.3fpt\" "
                + "alt=\"%s\"></object>",
                CHART_TYPE, key, width, width * figure.height(), HtmlText.escaped(figure.chart().textAlternative()));
    }

    private DefaultObjectDrawerFactory charts() {
        DefaultObjectDrawerFactory factory = new DefaultObjectDrawerFactory();
        factory.registerDrawer(CHART_TYPE, (element, x, y, width, height, device, context, dotsPerPixel) -> {
            draw(figures.get(element.getAttribute("data")), x, y, width / dotsPerPixel, height / dotsPerPixel, device);
            return Map.of();
        });
        return factory;
    }

    private static void draw(Block.Figure figure, double x, double y, double width, double height, OutputDevice device) {
        Chart chart = figure.chart();
        OutputDeviceGraphicsDrawer drawer = graphics -> {
            double scale = width / Block.Figure.WIDTH;
            graphics.scale(scale, scale);
            chart.chart().draw(graphics, new Rectangle2D.Double(0, 0, Block.Figure.WIDTH, height / scale));
        };
        device.drawWithGraphics((float) x, (float) y, (float) width, (float) height, drawer);
    }
}
