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
    DOCX("docx", DocxWriter::bytes),
    /** Spreadsheets: a sheet for each table. */
    XLSX("xlsx", XlsxWriter::bytes),
    /** Tagged pages to print and to hand in. */
    PDF("pdf", PdfWriter::bytes),
    /** A page for a browser that stands alone and prints. */
    HTML("html", HtmlWriter::bytes),
    /** Comma-separated values, a file for each table, in a zip archive. */
    CSV("csv.zip", CsvWriter::bytes),
    /** Tables for programs, as {@code document.schema.json} lays them down. */
    JSON("json", JsonTables::bytes);

    private interface Writer {
        byte[] bytes(Document document) throws IOException;
    }

    private final String ending;
    private final Writer writer;

    DocumentFormat(String ending, Writer writer) {
        this.ending = ending;
        this.writer = writer;
    }

    /** Ending of files. */
    public String ending() {
        return ending;
    }

    /** Name on the command line. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The document as a file of the format; the same document gives the same bytes. */
    public byte[] write(Document document) throws IOException {
        QuietLogging.set();
        return writer.bytes(document);
    }

    /** The format of a word. */
    public static Optional<DocumentFormat> of(String word) {
        return Arrays.stream(values()).filter(f -> f.word().equals(word)).findFirst();
    }

    /** All words. */
    public static String words() {
        return Arrays.stream(values()).map(DocumentFormat::word).collect(Collectors.joining(", "));
    }
}
