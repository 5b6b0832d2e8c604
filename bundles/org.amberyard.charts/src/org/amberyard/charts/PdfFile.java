package org.amberyard.charts;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.OutputStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** Draws a chart onto the only page of a PDF document, as large as the chart; letters are drawn as outlines. */
final class PdfFile {
    /** Points of a page per chart unit: 900 units take the ten inches of a letter page on its side. */
    private static final float POINTS = 0.8f;
    /** The document's mark among others is made of its content alone, so that the same chart gives the same bytes. */
    private static final long MARK = 0;

    private PdfFile() {
    }

    static void write(Chart chart, OutputStream out, int width, int height) throws IOException {
        try (PDDocument document = new PDDocument()) {
            document.setDocumentId(MARK);
            PDDocumentInformation about = document.getDocumentInformation();
            about.setTitle(chart.title());
            about.setSubject(chart.textAlternative());
            PDPage page = new PDPage(new PDRectangle(POINTS * width, POINTS * height));
            document.addPage(page);
            PdfBoxGraphics2D graphics = new PdfBoxGraphics2D(document, POINTS * width, POINTS * height);
            graphics.transform(AffineTransform.getScaleInstance(POINTS, POINTS));
            chart.chart().draw(graphics, new Rectangle2D.Double(0, 0, width, height));
            graphics.dispose();
            try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                content.drawForm(graphics.getXFormObject());
            }
            document.save(out);
        }
    }
}
