package org.amberyard.report.document;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.Locale;
import java.util.TimeZone;
import java.util.UUID;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.common.PDMetadata;

/** Takes out of a PDF what the clock wrote into it, so that the same document is the same file. */
final class SteadyPdf {
    private static final int YEAR = 2000;

    private SteadyPdf() {
    }

    /**
     * Settles dates and id.
     *
     * @param title title of the document
     * @param source what the pages are made from; another source gives another id
     */
    static void settle(PDDocument pdf, String title, String source) throws IOException {
        PDDocumentInformation known = pdf.getDocumentInformation();
        Calendar always = new GregorianCalendar(TimeZone.getTimeZone("UTC"), Locale.ROOT);
        always.clear();
        always.set(YEAR, Calendar.JANUARY, 1);
        known.setCreationDate(always);
        known.setModificationDate(always);
        known.setTitle(title);
        pdf.setDocumentId(id(source));
        PDMetadata metadata = pdf.getDocumentCatalog().getMetadata();
        String xmp = new String(metadata.toByteArray(), StandardCharsets.UTF_8)
                .replaceAll("(<xmp:(?:Create|Modify|Metadata)Date>)[^<]*", "$1" + YEAR + "-01-01T00:00:00Z");
        PDMetadata steady = new PDMetadata(pdf);
        steady.importXMPMetadata(xmp.getBytes(StandardCharsets.UTF_8));
        pdf.getDocumentCatalog().setMetadata(steady);
    }

    private static long id(String source) {
        return UUID.nameUUIDFromBytes(source.getBytes(StandardCharsets.UTF_8)).getMostSignificantBits();
    }
}
