package org.amberyard.report.document;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionGoTo;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageDestination;

/** Says in words where the links of a PDF lead, which ISO 14289-1 (PDF/UA-1), 7.18.5, asks for and the renderer leaves out. */
final class PdfLinks {
    private PdfLinks() {
    }

    static void describe(PDDocument pdf) throws IOException {
        for (PDPage page : pdf.getPages()) {
            for (PDAnnotation annotation : page.getAnnotations()) {
                if (annotation instanceof PDAnnotationLink link) {
                    link.setContents("Page " + (target(link) + 1));
                }
            }
        }
    }

    private static int target(PDAnnotationLink link) throws IOException {
        return link.getAction() instanceof PDActionGoTo go && go.getDestination() instanceof PDPageDestination destination
                ? destination.retrievePageNumber() : 0;
    }
}
