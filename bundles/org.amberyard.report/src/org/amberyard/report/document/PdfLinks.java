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
    /** What a destination says of a page that the document has not. */
    private static final int UNKNOWN = -1;

    private PdfLinks() {
    }

    static void describe(PDDocument pdf) throws IOException {
        for (PDPage page : pdf.getPages()) {
            for (PDAnnotation annotation : page.getAnnotations()) {
                if (annotation instanceof PDAnnotationLink link) {
                    link.setContents(words(link));
                }
            }
        }
    }

    /** The page that a link leads to; a link that leads to none that is known says no number. */
    private static String words(PDAnnotationLink link) throws IOException {
        int page = link.getAction() instanceof PDActionGoTo go && go.getDestination() instanceof PDPageDestination destination
                ? destination.retrievePageNumber() : UNKNOWN;
        return page == UNKNOWN ? "Another place in this document" : "Page " + (page + 1);
    }
}
