package org.amberyard.report;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.List;

/** Checks a document against the few words of JSON Schema that our schemas use. */
public final class SchemaCheck {
    private final List<String> violations = new ArrayList<>();

    private SchemaCheck() {
    }

    /** What of a value is not as its schema says, as sentences. */
    public static List<String> violations(JsonElement schema, JsonElement value, String path) {
        SchemaCheck check = new SchemaCheck();
        check.check(schema.getAsJsonObject(), value, path);
        return check.violations;
    }

    private void check(JsonObject schema, JsonElement value, String path) {
        if (schema.has("const") && !schema.get("const").equals(value)) {
            violations.add(path + " is " + value + ", not " + schema.get("const"));
        }
        if (schema.has("enum") && !schema.getAsJsonArray("enum").contains(value)) {
            violations.add(path + " is " + value + ", not one of " + schema.get("enum"));
        }
        if (schema.has("type") && !hasType(schema.get("type"), value)) {
            violations.add(path + " is " + value + ", not " + schema.get("type"));
        } else if (value.isJsonObject()) {
            checkObject(schema, value.getAsJsonObject(), path);
        } else if (value.isJsonArray()) {
            checkArray(schema, value.getAsJsonArray(), path);
        }
    }

    private static boolean hasType(JsonElement types, JsonElement value) {
        if (types.isJsonArray()) {
            return types.getAsJsonArray().asList().stream().anyMatch(t -> hasType(t, value));
        }
        return switch (types.getAsString()) {
            case "object" -> value.isJsonObject();
            case "array" -> value.isJsonArray();
            case "boolean" -> value.isJsonPrimitive() && value.getAsJsonPrimitive().isBoolean();
            case "null" -> value.isJsonNull();
            case "string" -> value.isJsonPrimitive() && value.getAsJsonPrimitive().isString();
            case "number" -> value.isJsonPrimitive() && value.getAsJsonPrimitive().isNumber();
            case "integer" -> value.isJsonPrimitive() && value.getAsJsonPrimitive().isNumber()
                    && value.getAsDouble() == Math.rint(value.getAsDouble());
            default -> throw new IllegalArgumentException("Type " + types);
        };
    }

    private void checkObject(JsonObject schema, JsonObject value, String path) {
        if (schema.has("required")) {
            schema.getAsJsonArray("required").forEach(name -> {
                if (!value.has(name.getAsString())) {
                    violations.add(path + " lacks " + name.getAsString());
                }
            });
        }
        JsonObject properties = schema.has("properties") ? schema.getAsJsonObject("properties") : new JsonObject();
        value.entrySet().forEach(e -> {
            if (properties.has(e.getKey())) {
                check(properties.getAsJsonObject(e.getKey()), e.getValue(), path + "." + e.getKey());
            } else {
                violations.add(path + " has an undocumented " + e.getKey());
            }
        });
    }

    private void checkArray(JsonObject schema, JsonArray value, String path) {
        JsonArray first = schema.has("prefixItems") ? schema.getAsJsonArray("prefixItems") : new JsonArray();
        if (schema.has("minItems") && value.size() < schema.get("minItems").getAsInt()) {
            violations.add(path + " is too short");
        }
        for (int i = 0; i < value.size(); i++) {
            JsonElement items = i < first.size() ? first.get(i) : schema.get("items");
            if (items.isJsonObject()) {
                check(items.getAsJsonObject(), value.get(i), path + "[" + i + "]");
            } else if (!items.getAsBoolean()) {
                violations.add(path + " is too long");
            }
        }
    }
}
