package org.amberyard.report.document;

import java.io.IOException;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.amberyard.model.io.QuietLogging;

/** File formats of documents. */
public enum DocumentFormat {
    /** Word processors. */
    DOCX(DocxWriter::bytes),
    /** Spreadsheets: a sheet for each table. */
    XLSX(XlsxWriter::bytes),
    /** Tagged pages to print and to hand in. */
    PDF(PdfWriter::bytes),
    /** A page for a browser that stands alone and prints. */
    HTML(HtmlWriter::bytes);

    private interface Writer {
        byte[] bytes(Document document) throws IOException;
    }

    private final Writer writer;

    DocumentFormat(Writer writer) {
        this.writer = writer;
    }

    /** Ending of files, and name on the command line. */
    public String ending() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The document as a file of the format; the same document gives the same bytes. */
    public byte[] write(Document document) throws IOException {
        QuietLogging.set();
        return writer.bytes(document);
    }

    /** The format of an ending. */
    public static Optional<DocumentFormat> of(String ending) {
        return Arrays.stream(values()).filter(f -> f.ending().equals(ending)).findFirst();
    }

    /** All endings as words. */
    public static String endings() {
        return Arrays.stream(values()).map(DocumentFormat::ending).collect(Collectors.joining(", "));
    }
}
