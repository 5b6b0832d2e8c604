package org.amberyard.report;

import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.io.Writer;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import org.amberyard.core.plan.EngineVersion;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.units.UnitSystem;

/**
 * Writes results.json: what the result is of, then every table with its columns and rows. The same result gives the same
 * bytes: no times, no paths. The format is laid down in {@code results.schema.json}.
 */
public final class ResultsJson {
    /** Name of the format. */
    public static final String FORMAT = "amberyard-results";
    /**
     * Version of the format: rises, once between two releases, when a table or column comes, goes, moves or changes its name or meaning.
     * Version 2 has the tariff in the tables of bills.
     */
    public static final int VERSION = 3;

    private final JsonWriter json;

    private ResultsJson(Writer out) {
        json = new JsonWriter(out);
        json.setIndent(" ");
    }

    /** Writes a result; the writer is flushed and left open. */
    public static void write(StudyResult result, UnitSystem system, Writer out) throws IOException {
        write(result, system, ResultTables.of(result, system), out);
    }

    /** Writes only the tables whose names are chosen; the others are not made. */
    static void write(StudyResult result, UnitSystem system, Predicate<String> chosen, Writer out) throws IOException {
        write(result, system, ResultTables.of(result, system, chosen, Progress.NONE), out);
    }

    /** Writes a result with tables that have been made of it. */
    static void write(StudyResult result, UnitSystem system, List<ResultTable> tables, Writer out) throws IOException {
        ResultsJson document = new ResultsJson(out);
        document.write(result, system, tables);
        document.json.flush();
    }

    private void write(StudyResult result, UnitSystem system, List<ResultTable> tables) throws IOException {
        StudyInput study = result.input();
        json.beginObject();
        json.name("format").value(FORMAT).name("version").value(VERSION);
        json.name("engine_version").value(EngineVersion.VALUE);
        json.name("study").value(study.name()).name("currency").value(study.currency());
        json.name("unit_system").value(lower(system)).name("base_year").value(study.baseYear());
        json.name("years").value(study.years()).name("money_basis").value(lower(study.money().basis()));
        json.name("tables").beginObject();
        for (ResultTable table : tables) {
            write(table);
        }
        json.endObject().endObject();
    }

    private static String lower(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    private void write(ResultTable table) throws IOException {
        json.name(table.name()).beginObject().name("title").value(table.title());
        json.name("watermark").value(table.watermark());
        json.name("columns").beginArray();
        for (ResultColumn column : table.columns()) {
            json.beginObject().name("name").value(column.name()).name("label").value(column.label());
            json.name("unit").value(column.unit()).name("type").value(lower(column.type()));
            json.name("meaning").value(column.meaning()).endObject();
        }
        json.endArray().name("rows").beginArray();
        for (List<Object> row : table.rows()) {
            write(row);
        }
        json.endArray().endObject();
    }

    /** One row to a line keeps the file short and easy to compare. */
    private void write(List<Object> row) throws IOException {
        json.beginArray();
        json.setIndent("");
        for (Object cell : row) {
            write(cell);
        }
        json.endArray();
        json.setIndent(" ");
    }

    private void write(Object cell) throws IOException {
        if (cell instanceof Integer whole) {
            json.value(whole.longValue());
        } else if (cell instanceof Double number) {
            json.value(number.doubleValue());
        } else {
            json.value((String) cell);
        }
    }
}
