package org.amberyard.report.papers;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.amberyard.report.papers.FrozenFigures.Row;
import org.amberyard.report.papers.FrozenFigures.Table;

/**
 * What tells the rows of a table apart: the fewest of its leading words and years, over the table as it was and as it is, that do
 * so as well as all of them. A year takes the words beside it along.
 */
final class RowNames {
    private final Table table;
    private final List<Integer> columns;

    private RowNames(Table table, List<Integer> columns) {
        this.table = table;
        this.columns = columns;
    }

    /**
     * The names of a table's rows.
     *
     * @param before the table as it was
     * @param now the table as it is
     * @param columns columns of both
     */
    static Both of(Table before, Table now, List<SharedColumn> columns) {
        List<SharedColumn> naming = columns.stream().filter(c -> before.columns().get(c.before()).isNaming()).toList();
        int all = apart(before, now, naming);
        int fewest = IntStream.rangeClosed(1, naming.size()).filter(k -> apart(before, now, naming.subList(0, k)) == all).findFirst()
                .orElse(naming.size());
        List<SharedColumn> names = naming.subList(0, fewest + (wordsFollow(now, naming, fewest) ? 1 : 0));
        return new Both(new RowNames(before, names.stream().map(SharedColumn::before).toList()),
                new RowNames(now, names.stream().map(SharedColumn::now).toList()));
    }

    private static boolean wordsFollow(Table table, List<SharedColumn> naming, int names) {
        return names > 0 && names < naming.size() && !table.columns().get(naming.get(names - 1).now()).isWords()
                && table.columns().get(naming.get(names).now()).isWords() && naming.get(names).now() == naming.get(names - 1).now() + 1;
    }

    /** Names of the rows before and now. */
    record Both(RowNames before, RowNames now) {
    }

    /** Names that differ within a table, over both. */
    private static int apart(Table before, Table now, List<SharedColumn> naming) {
        return distinct(before, naming.stream().map(SharedColumn::before).toList())
                + distinct(now, naming.stream().map(SharedColumn::now).toList());
    }

    private static int distinct(Table table, List<Integer> columns) {
        Set<List<String>> names = new HashSet<>();
        table.rows().forEach(r -> names.add(name(r, columns)));
        return names.size();
    }

    private static List<String> name(Row row, List<Integer> columns) {
        return Stream.concat(Stream.of(row.kind()), columns.stream().map(row::cell)).toList();
    }

    /** The name of each row, to find it by. */
    List<List<String>> keys() {
        return table.rows().stream().map(r -> name(r, columns)).toList();
    }

    /** True when a column belongs to the names. */
    boolean has(int column) {
        return columns.contains(column);
    }

    /** The name of each row for people; rows of the same name are told apart by their order. */
    List<String> labels() {
        Map<String, Integer> times = new HashMap<>();
        List<String> labels = new ArrayList<>();
        for (int i = 0; i < table.rows().size(); i++) {
            String label = label(i);
            int nth = times.merge(label, 1, Integer::sum);
            labels.add(nth == 1 ? label : label + " no. " + nth);
        }
        return labels;
    }

    private String label(int row) {
        Row of = table.rows().get(row);
        List<String> words = columns.stream().map(of::cell).filter(c -> !c.isEmpty()).toList();
        return !words.isEmpty() ? String.join(", ", words)
                : of.cells().stream().filter(c -> !c.isEmpty()).findFirst().orElse("row " + (row + 1));
    }
}
