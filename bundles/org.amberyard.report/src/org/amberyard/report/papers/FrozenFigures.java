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
     * @param title caption with its number
     * @param columns columns from left to right
     * @param rows rows from top to bottom
     */
    record Table(String title, List<Column> columns, List<Row> rows) {
    }

    /**
     * A column.
     *
     * @param heading heading with its unit
     * @param type text, year, number, percent or value
     */
    record Column(String heading, String type) {

        boolean isWords() {
            return type.equals("text");
        }

        /** True for words and years, which say what a row is about; false for figures. */
        boolean isNaming() {
            return isWords() || type.equals("year");
        }
    }

    /**
     * A row.
     *
     * @param kind line, group, total or check
     * @param cells cells, empty where there is nothing
     */
    record Row(String kind, List<String> cells) {

        /** A cell; empty where the row has none. */
        String cell(int column) {
            return column < cells.size() ? cells.get(column) : "";
        }
    }

    private FrozenFigures(String text) {
        this.json = new JsonReader(new StringReader(text));
    }

    /** Tables by their short name, as T4a: a title may name what has changed. */
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
        String name = "";
        String title = "";
        List<Column> columns = new ArrayList<>();
        List<Row> rows = new ArrayList<>();
        json.beginObject();
        while (json.hasNext()) {
            switch (json.nextName()) {
                case "name" -> name = json.nextString();
                case "title" -> title = json.nextString();
                case "columns" -> each(() -> columns.add(column()));
                case "rows" -> each(() -> rows.add(row()));
                default -> json.skipValue();
            }
        }
        json.endObject();
        tables.put(name, new Table(title, columns, rows));
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

    private Column column() throws IOException {
        String label = "";
        String unit = "";
        String type = "";
        json.beginObject();
        while (json.hasNext()) {
            switch (json.nextName()) {
                case "label" -> label = json.nextString();
                case "unit" -> unit = json.nextString();
                case "type" -> type = json.nextString();
                default -> json.skipValue();
            }
        }
        json.endObject();
        return new Column(unit.isEmpty() ? label : label + " (" + unit + ")", type);
    }

    private Row row() throws IOException {
        String kind = "";
        List<String> cells = new ArrayList<>();
        json.beginObject();
        while (json.hasNext()) {
            switch (json.nextName()) {
                case "kind" -> kind = json.nextString();
                case "cells" -> each(() -> cells.add(cell()));
                default -> json.skipValue();
            }
        }
        json.endObject();
        return new Row(kind, cells);
    }

    private String cell() throws IOException {
        if (json.peek() == JsonToken.NULL) {
            json.nextNull();
            return "";
        }
        return json.nextString();
    }
}
