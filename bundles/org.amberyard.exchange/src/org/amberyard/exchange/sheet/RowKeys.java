package org.amberyard.exchange.sheet;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** The names in the key column of a list, each of which may stand in one row only. */
final class RowKeys {
    private final MappedSheet sheet;
    private final String id;
    private final Map<ElementKey, MappedRow> rows = new HashMap<>();

    RowKeys(MappedSheet sheet, String id) {
        this.sheet = sheet;
        this.id = id;
    }

    /** The name of a row. */
    String of(MappedRow row) throws CellFault {
        String name = row.text(id).orElseThrow(() -> row.wrong(id,
                "The row has no name in “" + sheet.header(id) + "”; enter one, or delete the row."));
        MappedRow other = rows.putIfAbsent(ElementKey.of(name), row);
        if (other != null) {
            throw row.wrong(id, "“" + name + "” stands in rows " + other.number() + " and " + row.number() + "; "
                    + differences(other, row) + ". Keep one of them.");
        }
        return name;
    }

    private String differences(MappedRow one, MappedRow other) {
        List<String> ids = sheet.mapping().columns().entrySet().stream().sorted(Map.Entry.comparingByKey()).map(e -> e.getValue().id())
                .filter(c -> !c.equals(id)).toList();
        List<String> differing = IntStream.range(0, ids.size()).filter(i -> !one.cell(ids.get(i)).equals(other.cell(ids.get(i))))
                .mapToObj(i -> sheet.header(ids.get(i))).toList();
        return differing.isEmpty() ? "the rows are alike" : "they differ in " + String.join(", ", differing);
    }

    boolean holds(String name) {
        return rows.containsKey(ElementKey.of(name));
    }
}
