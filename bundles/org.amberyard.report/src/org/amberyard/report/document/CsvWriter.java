package org.amberyard.report.document;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.amberyard.charts.DelimitedText;
import org.amberyard.model.io.SteadyZip;

/**
 * Writes the tables of a document as comma-separated values, RFC 4180 in UTF-8, a file for each in a zip archive, and beside them
 * {@code contents.csv}, which says of every file its caption, what it must say, and its notes. Figures have no thousands
 * separators; those of a table that is not for submission say so in every row.
 */
final class CsvWriter {
    private static final String ENDING = ".csv";
    private static final String CONTENTS = "contents";

    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private final Set<String> names = new HashSet<>(Set.of(CONTENTS));
    private final List<List<String>> contents = new ArrayList<>();

    private CsvWriter() {
    }

    static byte[] bytes(Document document) throws IOException {
        return SteadyZip.of(new CsvWriter().packed(document));
    }

    private byte[] packed(Document document) throws IOException {
        document.facts().forEach(f -> contents.add(List.of("", f.label(), f.value(), "")));
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (DataTable table : document.tables()) {
                String name = name(table);
                contents.add(List.of(name + ENDING, table.title(), table.mark(), String.join(" ", table.notes())));
                add(zip, name, text(table));
            }
            add(zip, CONTENTS, DelimitedText.CSV.document(List.of("File", "Title", "Mark or fact", "Notes"), contents));
        }
        return bytes.toByteArray();
    }

    private static void add(ZipOutputStream zip, String name, String text) throws IOException {
        zip.putNextEntry(new ZipEntry(name + ENDING));
        zip.write(text.getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
    }

    private String name(DataTable table) {
        String base = table.name().replaceAll("[^A-Za-z0-9._-]+", "_");
        String name = base;
        for (int i = 2; !names.add(name.toLowerCase(Locale.ROOT)); i++) {
            name = base + "_" + i;
        }
        return name;
    }

    private static String text(DataTable table) {
        List<String> heads = new ArrayList<>(table.columns().stream().map(CsvWriter::head).toList());
        List<List<Object>> rows = new ArrayList<>();
        for (DataTable.Row row : table.rows()) {
            List<Object> cells = new ArrayList<>();
            for (int i = 0; i < heads.size(); i++) {
                cells.add(table.columns().get(i).plain(row.cells().get(i)));
            }
            rows.add(cells);
        }
        if (!table.mark().isEmpty()) {
            heads.add("Mark");
            rows.forEach(r -> r.add(table.mark()));
        }
        return DelimitedText.CSV.document(heads, rows);
    }

    private static String head(DataTable.Column column) {
        String unit = column.plainUnit();
        return column.label() + (unit.isEmpty() ? "" : " (" + unit + ")");
    }
}
