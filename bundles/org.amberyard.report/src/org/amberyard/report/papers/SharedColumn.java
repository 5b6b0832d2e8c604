package org.amberyard.report.papers;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;
import org.amberyard.report.papers.FrozenFigures.Column;
import org.amberyard.report.papers.FrozenFigures.Table;

/**
 * A column that a table had and still has.
 *
 * @param heading heading with its unit
 * @param before place in the table as it was
 * @param now place in the table as it is
 */
record SharedColumn(String heading, int before, int now) {
    private static final String LINE = "line";

    /** Columns of the same heading, the first with the first, the second with the second. */
    static List<SharedColumn> of(Table before, Table now) {
        List<String> left = new ArrayList<>(now.columns().stream().map(Column::heading).toList());
        List<SharedColumn> shared = new ArrayList<>();
        for (int i = 0; i < before.columns().size(); i++) {
            String heading = before.columns().get(i).heading();
            int at = left.indexOf(heading);
            if (at >= 0) {
                shared.add(new SharedColumn(heading, i, at));
                left.set(at, null);
            }
        }
        return shared;
    }

    /** Headings of the columns of a table that are not shared. */
    static List<String> others(Table table, Collection<SharedColumn> shared, ToIntFunction<SharedColumn> place) {
        List<String> others = new ArrayList<>();
        for (int i = 0; i < table.columns().size(); i++) {
            int at = i;
            if (shared.stream().mapToInt(place).noneMatch(p -> p == at)) {
                others.add(table.columns().get(i).heading());
            }
        }
        return others;
    }

    /** True when it only numbers the lines, 1, 2, 3 …: a line that goes gives the others new numbers, which says nothing of them. */
    boolean numbers(Table tableBefore, Table tableNow) {
        return numbers(tableBefore, before) && numbers(tableNow, now);
    }

    private static boolean numbers(Table table, int column) {
        List<String> cells = table.rows().stream().filter(r -> r.kind().equals(LINE)).map(r -> r.cell(column)).toList();
        return !cells.isEmpty() && IntStream.range(0, cells.size()).allMatch(i -> cells.get(i).equals(Integer.toString(i + 1)));
    }
}
