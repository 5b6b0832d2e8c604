package org.amberyard.report.document;

import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;

/** Writes the tables of a document for programs, as {@code document.schema.json} lays down; figures are rounded as printed. */
final class JsonTables {
    /** Name of the format. */
    static final String FORMAT = "amberyard-document";
    /** Version of the format. */
    static final int VERSION = 1;

    private final StringWriter text = new StringWriter();
    private final JsonWriter json = new JsonWriter(text);

    private JsonTables() {
        json.setIndent(" ");
    }

    static byte[] bytes(Document document) throws IOException {
        JsonTables tables = new JsonTables();
        tables.write(document);
        return (tables.text + "\n").getBytes(StandardCharsets.UTF_8);
    }

    private void write(Document document) throws IOException {
        json.beginObject().name("format").value(FORMAT).name("version").value(VERSION);
        json.name("name").value(document.name()).name("title").value(document.title());
        json.name("subtitle").value(document.subtitle()).name("mark").value(document.mark());
        json.name("facts").beginArray();
        for (Document.Fact fact : document.facts()) {
            json.beginObject().name("label").value(fact.label()).name("value").value(fact.value()).endObject();
        }
        json.endArray().name("tables").beginArray();
        for (DataTable table : document.tables()) {
            write(table);
        }
        json.endArray().endObject().flush();
    }

    private void write(DataTable table) throws IOException {
        json.beginObject().name("name").value(table.name()).name("title").value(table.title()).name("mark").value(table.mark());
        json.name("columns").beginArray();
        for (DataTable.Column column : table.columns()) {
            json.beginObject().name("label").value(column.label()).name("unit").value(column.plainUnit());
            json.name("type").value(lower(column.format().kind())).name("to_fill").value(column.toFill()).endObject();
        }
        json.endArray().name("rows").beginArray();
        for (DataTable.Row row : table.rows()) {
            write(table, row);
        }
        json.endArray().name("notes").beginArray();
        for (String note : table.notes()) {
            json.value(note);
        }
        json.endArray().endObject();
    }

    /** One row to a line keeps the file short and easy to compare. */
    private void write(DataTable table, DataTable.Row row) throws IOException {
        json.beginObject();
        json.setIndent("");
        json.name("kind").value(lower(row.kind())).name("cells").beginArray();
        List<DataTable.Column> columns = table.columns();
        for (int i = 0; i < columns.size(); i++) {
            write(columns.get(i).plain(row.cells().get(i)));
        }
        json.endArray().endObject();
        json.setIndent(" ");
    }

    private void write(Object cell) throws IOException {
        if (cell instanceof BigDecimal number) {
            json.value(number);
        } else {
            json.value((String) cell);
        }
    }

    private static String lower(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }
}
