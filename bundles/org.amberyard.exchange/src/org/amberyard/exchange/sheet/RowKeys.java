package org.amberyard.exchange.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/** The names in the key column of a list, each of which may stand in one row only, unless rows of a name belong together. */
final class RowKeys {
    private final MappedSheet sheet;
    private final String id;
    private final BiPredicate<MappedRow, MappedRow> together;
    private final Map<ElementKey, List<MappedRow>> rows = new HashMap<>();
    private UnaryOperator<String> naming = UnaryOperator.identity();

    RowKeys(MappedSheet sheet, String id) {
        this(sheet, id, (one, other) -> false);
    }

    /** @param together whether two rows of a name tell different things of the same element */
    RowKeys(MappedSheet sheet, String id, BiPredicate<MappedRow, MappedRow> together) {
        this.sheet = sheet;
        this.id = id;
        this.together = together;
    }

    /** Says what of the text in the key column is the name. */
    void named(UnaryOperator<String> by) {
        naming = by;
    }

    /** The name of a row. */
    String of(MappedRow row) throws CellFault {
        String name = row.text(id).map(naming).orElseThrow(() -> row.wrong(id,
                "The row has no name in “" + sheet.header(id) + "”; enter one, or delete the row."));
        List<MappedRow> others = rows.computeIfAbsent(ElementKey.of(name), k -> new ArrayList<>());
        Optional<MappedRow> same = others.stream().filter(other -> !together.test(other, row)).findFirst();
        if (same.isPresent()) {
            throw row.wrong(id, "“" + name + "” stands in rows " + same.get().number() + " and " + row.number() + "; "
                    + differences(same.get(), row) + ". Keep one of them.");
        }
        others.add(row);
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
