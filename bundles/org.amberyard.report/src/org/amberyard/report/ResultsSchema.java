package org.amberyard.report;

import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.Writer;
import java.util.List;
import java.util.Locale;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.units.UnitSystem;

/**
 * Writes the JSON Schema (2020-12) of results.json from the definitions of the tables. The bundle ships what this writes; a
 * test keeps the two the same.
 */
public final class ResultsSchema {
    private static final String CURRENCY = "money";

    private final JsonWriter json;

    private ResultsSchema(Writer out) {
        json = new JsonWriter(out);
        json.setIndent("  ");
    }

    /** The schema as a document. */
    public static String document() throws IOException {
        StringWriter out = new StringWriter();
        new ResultsSchema(out).write();
        return out + "\n";
    }

    private void write() throws IOException {
        json.beginObject();
        json.name("$schema").value("https://json-schema.org/draft/2020-12/schema");
        json.name("title").value("Results of an Amberyard study");
        json.name("type").value("object");
        json.name("properties").beginObject();
        constant("format", ResultsJson.FORMAT);
        json.name("version").beginObject().name("const").value(ResultsJson.VERSION).endObject();
        property("engine_version", "string", "Version of the method that computed the results.");
        property("study", "string", "Name of the study.");
        property("currency", "string", "Currency code of all money.");
        choice("unit_system", "Unit system of all figures; each column states its unit.", List.of("us", "metric"));
        property("base_year", "integer", "Calendar number of the first year.");
        property("years", "integer", "Number of years studied.");
        choice("money_basis", "Money in which yearly amounts stand: of the base year or of the year of payment.",
                List.of("constant", "nominal"));
        tables();
        json.endObject();
        required(List.of("format", "version", "engine_version", "study", "currency", "unit_system", "base_year", "years",
                "money_basis", "tables"));
        json.endObject();
    }

    private void tables() throws IOException {
        json.name("tables").beginObject().name("type").value("object").name("properties").beginObject();
        for (TableDefinition<?> table : ResultTables.definitions(Progress.NONE)) {
            table(table);
        }
        json.endObject();
        required(ResultTables.definitions(Progress.NONE).stream().map(TableDefinition::name).toList());
        json.endObject();
    }

    private void table(TableDefinition<?> table) throws IOException {
        List<ResultColumn> us = table.columns(UnitSystem.US, CURRENCY);
        List<ResultColumn> metric = table.columns(UnitSystem.METRIC, CURRENCY);
        json.name(table.name()).beginObject().name("description").value(table.title());
        json.name("type").value("object").name("properties").beginObject();
        property("title", "string", "Title for people.");
        property("watermark", "string", "What must be said wherever the figures are shown; empty when there is nothing to say.");
        json.name("columns").beginObject().name("type").value("array").name("prefixItems").beginArray();
        for (int i = 0; i < us.size(); i++) {
            column(us.get(i), metric.get(i));
        }
        json.endArray().name("items").value(false).endObject();
        rows(us);
        json.endObject();
        required(List.of("title", "watermark", "columns", "rows"));
        json.endObject();
    }

    private void column(ResultColumn us, ResultColumn metric) throws IOException {
        json.beginObject().name("description").value(us.meaning());
        json.name("type").value("object").name("properties").beginObject();
        constant("name", us.name());
        constant("label", us.label());
        boolean same = us.unit().equals(metric.unit());
        String unit = same ? us.unit() : us.unit() + " or " + metric.unit();
        property("unit", "string", us.unit().isEmpty() ? "Empty: text has no unit." : "In " + unit + ".");
        constant("type", us.type().name().toLowerCase(Locale.ROOT));
        property("meaning", "string", "What the column holds.");
        json.endObject();
        required(List.of("name", "label", "unit", "type", "meaning"));
        json.endObject();
    }

    private void rows(List<ResultColumn> columns) throws IOException {
        json.name("rows").beginObject().name("type").value("array").name("items").beginObject();
        json.name("type").value("array").name("minItems").value(columns.size()).name("prefixItems").beginArray();
        for (ResultColumn column : columns) {
            json.beginObject().name("description").value(column.name()).name("type").beginArray();
            json.value(jsonType(column.type())).value("null").endArray().endObject();
        }
        json.endArray().name("items").value(false).endObject().endObject();
    }

    private static String jsonType(ResultColumn.Type type) {
        return switch (type) {
            case TEXT, FIGURE -> "string";
            case INTEGER -> "integer";
            case NUMBER, MONEY -> "number";
        };
    }

    private void property(String name, String type, String description) throws IOException {
        json.name(name).beginObject().name("type").value(type).name("description").value(description).endObject();
    }

    private void constant(String name, String value) throws IOException {
        json.name(name).beginObject().name("const").value(value).endObject();
    }

    private void choice(String name, String description, List<String> values) throws IOException {
        json.name(name).beginObject().name("enum").beginArray();
        for (String value : values) {
            json.value(value);
        }
        json.endArray().name("description").value(description).endObject();
    }

    private void required(List<String> names) throws IOException {
        json.name("required").beginArray();
        for (String name : names) {
            json.value(name);
        }
        json.endArray();
    }
}
