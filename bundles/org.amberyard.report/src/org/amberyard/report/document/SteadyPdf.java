package org.amberyard.report.document;

import java.nio.charset.StandardCharsets;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.Locale;
import java.util.TimeZone;
import java.util.UUID;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;

/** Takes out of a PDF what the clock wrote into it, so that the same document is the same file; its XMP holds no times. */
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
    static void settle(PDDocument pdf, String title, String source) {
        PDDocumentInformation known = pdf.getDocumentInformation();
        Calendar always = new GregorianCalendar(TimeZone.getTimeZone("UTC"), Locale.ROOT);
        always.clear();
        always.set(YEAR, Calendar.JANUARY, 1);
        known.setCreationDate(always);
        known.setModificationDate(always);
        known.setTitle(title);
        pdf.setDocumentId(id(source));
    }

    private static long id(String source) {
        return UUID.nameUUIDFromBytes(source.getBytes(StandardCharsets.UTF_8)).getMostSignificantBits();
    }
}
