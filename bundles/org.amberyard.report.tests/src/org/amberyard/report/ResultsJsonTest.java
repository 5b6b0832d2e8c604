package org.amberyard.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.testsupport.SampleDistrict;
import org.junit.jupiter.api.Test;

class ResultsJsonTest {
    private final StudyResult result = SampleDistrict.evaluated(SampleDistrict.small());

    private static String json(StudyResult result) throws IOException {
        StringWriter out = new StringWriter();
        ResultsJson.write(result, UnitSystem.US, out);
        return out.toString();
    }

    private static String shippedSchema() throws IOException {
        try (InputStream in = ResultsJson.class.getResourceAsStream("results.schema.json")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void figuresComeBackExactly() throws IOException {
        JsonObject tables = JsonParser.parseString(json(result)).getAsJsonObject().getAsJsonObject("tables");
        for (ResultTable table : ResultTables.of(result, UnitSystem.US)) {
            JsonArray rows = tables.getAsJsonObject(table.name()).getAsJsonArray("rows");
            assertEquals(table.rows().size(), rows.size());
            for (int row = 0; row < rows.size(); row++) {
                assertEquals(table.rows().get(row), cells(rows.get(row).getAsJsonArray(), table.rows().get(row)));
            }
        }
    }

    private static List<Object> cells(JsonArray row, List<Object> expected) {
        List<Object> cells = new ArrayList<>();
        for (int i = 0; i < row.size(); i++) {
            JsonElement cell = row.get(i);
            if (cell.isJsonNull()) {
                cells.add(null);
            } else if (cell.getAsJsonPrimitive().isString()) {
                cells.add(cell.getAsString());
            } else {
                cells.add(expected.get(i) instanceof Integer ? (Object) cell.getAsInt() : (Object) cell.getAsDouble());
            }
        }
        return cells;
    }

    @Test
    void theSameStudyGivesTheSameBytes() throws IOException {
        assertEquals(json(result), json(SampleDistrict.evaluatedAfresh(SampleDistrict.small())));
    }

    @Test
    void theShippedSchemaIsThatOfTheTables() throws IOException {
        assertEquals(ResultsSchema.document(), shippedSchema());
    }

    @Test
    void theDocumentFollowsTheShippedSchema() throws IOException {
        JsonElement schema = JsonParser.parseString(shippedSchema());
        for (StudyResult some : List.of(result, SampleDistrict.evaluated(SampleDistrict.baselineOnly()),
                SampleDistrict.evaluated(SampleDistrict.withoutRoutes()))) {
            assertEquals(List.of(), SchemaCheck.violations(schema, JsonParser.parseString(json(some)), "$"));
        }
    }

    /** The first version had fewer columns in the tables of bills; whoever holds a file against this schema learns that it is of another. */
    @Test
    void aFileOfTheFirstVersionIsToldByItsVersion() throws IOException {
        JsonObject document = JsonParser.parseString(json(result)).getAsJsonObject();
        document.addProperty("version", 1);
        assertEquals(List.of("$.version is 1, not 3"), SchemaCheck.violations(JsonParser.parseString(shippedSchema()), document, "$"));
    }

    @Test
    void theSchemaRefusesAMissingTableAndAWrongCell() throws IOException {
        JsonElement schema = JsonParser.parseString(shippedSchema());
        JsonObject document = JsonParser.parseString(json(result)).getAsJsonObject();
        JsonObject tables = document.getAsJsonObject("tables");
        tables.remove("route_fit");
        tables.getAsJsonObject("headline").getAsJsonArray("rows").get(0).getAsJsonArray().remove(0);
        List<String> violations = SchemaCheck.violations(schema, document, "$");
        assertTrue(violations.contains("$.tables lacks route_fit"), violations.toString());
        assertTrue(violations.stream().anyMatch(v -> v.startsWith("$.tables.headline.rows[0]")), violations.toString());
    }
}
