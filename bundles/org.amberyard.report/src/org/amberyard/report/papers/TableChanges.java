package org.amberyard.report.papers;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.amberyard.report.papers.FrozenFigures.Row;
import org.amberyard.report.papers.FrozenFigures.Table;

/** What has become of a printed table: cells that are others, rows and columns that came, went or moved. */
final class TableChanges {
    private final String title;
    private final Table before;
    private final Table now;
    private final List<SharedColumn> shared;
    private final List<SharedColumn> compared;
    private final RowNames.Both names;
    private final RowPairs pairs;
    private final List<String> lines = new ArrayList<>();

    private TableChanges(Table before, Table now) {
        this.title = now.title();
        this.before = before;
        this.now = now;
        this.shared = SharedColumn.of(before, now);
        this.compared = shared.stream().filter(c -> !c.numbers(before, now)).toList();
        this.names = RowNames.of(before, now, compared);
        this.pairs = RowPairs.of(names, cells(before, SharedColumn::before), cells(now, SharedColumn::now));
    }

    /** In words what differs between tables, by their short names. */
    static List<String> of(Map<String, Table> before, Map<String, Table> now) {
        List<String> lines = new ArrayList<>();
        before.forEach((name, table) -> lines.addAll(now.containsKey(name) ? new TableChanges(table, now.get(name)).lines()
                : List.of(table.title() + ": the table is gone; it had " + table.rows().size() + " rows")));
        now.forEach((name, table) -> {
            if (!before.containsKey(name)) {
                lines.add(table.title() + ": the table is new, with " + table.rows().size() + " rows");
            }
        });
        return lines;
    }

    private List<String> lines() {
        SharedColumn.others(before, shared, SharedColumn::before).forEach(c -> lines.add(title + ": column “" + c + "” is gone"));
        SharedColumn.others(now, shared, SharedColumn::now).forEach(c -> lines.add(title + ": column “" + c + "” is new"));
        gone();
        Set<Integer> moved = pairs.moved();
        List<String> labels = names.now().labels();
        for (int i = 0; i < labels.size(); i++) {
            if (pairs.isNew(i)) {
                lines.add(of(labels.get(i)) + ": the row is new" + listed(": ", now, i, names.now()));
            } else {
                stayed(i, of(labels.get(i)), moved.contains(i));
            }
        }
        return lines;
    }

    private void gone() {
        List<String> labels = names.before().labels();
        for (int i = 0; i < labels.size(); i++) {
            if (pairs.isGone(i)) {
                lines.add(of(labels.get(i)) + ": the row is gone" + listed("; it had ", before, i, names.before()));
            }
        }
    }

    private void stayed(int row, String label, boolean moved) {
        int was = pairs.before(row);
        if (moved) {
            lines.add(label + ": moved from row " + (was + 1) + " to row " + (row + 1));
        }
        for (SharedColumn column : compared) {
            String old = before.rows().get(was).cell(column.before());
            String cell = now.rows().get(row).cell(column.now());
            if (!old.equals(cell)) {
                lines.add(label + ", " + column.heading() + ": " + NamedValues.change(old, cell));
            }
        }
    }

    private String of(String label) {
        return title + ", " + label;
    }

    private List<List<String>> cells(Table table, ToIntFunction<SharedColumn> place) {
        return table.rows().stream().map(r -> Stream.concat(Stream.of(r.kind()), compared.stream().map(
                c -> r.cell(place.applyAsInt(c)))).toList()).toList();
    }

    private static String listed(String start, Table table, int row, RowNames named) {
        Row of = table.rows().get(row);
        String cells = IntStream.range(0, table.columns().size()).filter(c -> !named.has(c) && !of.cell(c).isEmpty())
                .mapToObj(c -> table.columns().get(c).heading() + " " + of.cell(c)).collect(Collectors.joining("; "));
        return cells.isEmpty() ? "" : start + cells;
    }
}
