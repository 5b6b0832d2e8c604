package org.amberyard.report.papers;

import com.google.gson.stream.JsonReader;
import com.google.gson.stream.JsonToken;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The figures of a document as {@code document.schema.json} lays them down: cells as text by table, row and column. */
final class FrozenFigures {
    private final JsonReader json;

    /**
     * A table.
     *
     * @param columns headings with units
     * @param rows cells, empty where there is nothing
     */
    record Table(List<String> columns, List<List<String>> rows) {
    }

    private FrozenFigures(String text) {
        this.json = new JsonReader(new StringReader(text));
    }

    /** Tables by their title. */
    static Map<String, Table> of(String text) throws IOException {
        FrozenFigures figures = new FrozenFigures(text);
        Map<String, Table> tables = new LinkedHashMap<>();
        figures.json.beginObject();
        while (figures.json.hasNext()) {
            if (figures.json.nextName().equals("tables")) {
                figures.json.beginArray();
                while (figures.json.hasNext()) {
                    figures.table(tables);
                }
                figures.json.endArray();
            } else {
                figures.json.skipValue();
            }
        }
        return tables;
    }

    private void table(Map<String, Table> tables) throws IOException {
        String title = "";
        List<String> columns = new ArrayList<>();
        List<List<String>> rows = new ArrayList<>();
        json.beginObject();
        while (json.hasNext()) {
            switch (json.nextName()) {
                case "title" -> title = json.nextString();
                case "columns" -> each(() -> columns.add(heading()));
                case "rows" -> each(() -> rows.add(cells()));
                default -> json.skipValue();
            }
        }
        json.endObject();
        tables.put(title, new Table(columns, rows));
    }

    private interface Reading {
        void once() throws IOException;
    }

    private void each(Reading element) throws IOException {
        json.beginArray();
        while (json.hasNext()) {
            element.once();
        }
        json.endArray();
    }

    private String heading() throws IOException {
        String label = "";
        String unit = "";
        json.beginObject();
        while (json.hasNext()) {
            switch (json.nextName()) {
                case "label" -> label = json.nextString();
                case "unit" -> unit = json.nextString();
                default -> json.skipValue();
            }
        }
        json.endObject();
        return unit.isEmpty() ? label : label + " (" + unit + ")";
    }

    private List<String> cells() throws IOException {
        List<String> cells = new ArrayList<>();
        json.beginObject();
        while (json.hasNext()) {
            if (json.nextName().equals("cells")) {
                each(() -> cells.add(cell()));
            } else {
                json.skipValue();
            }
        }
        json.endObject();
        return cells;
    }

    private String cell() throws IOException {
        if (json.peek() == JsonToken.NULL) {
            json.nextNull();
            return "";
        }
        return json.nextString();
    }
}
