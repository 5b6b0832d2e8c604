package org.amberyard.report.papers;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.amberyard.core.progress.Progress;
import org.amberyard.report.ResultTable;
import org.amberyard.report.ResultTables;

/**
 * A row of a table of results, in the units of the study.
 *
 * @param table the table
 * @param row place of the row
 */
record ResultLine(ResultTable table, int row) {
    private static final String PLAN = "plan";

    /** The rows of a table that are about the plan, or all rows of one that is about no plan. */
    static List<ResultLine> of(PaperInput in, String name) {
        return of(in, name, in.plan().name());
    }

    /** The rows of a table that are about a plan. */
    static List<ResultLine> of(PaperInput in, String name, String plan) {
        ResultTable table = ResultTables.of(ResultTables.place(name), in.result(), in.system(), Progress.NONE);
        return all(table, plan);
    }

    /** The rows of a table that are about a plan, or all rows of one that is about no plan. */
    static List<ResultLine> all(ResultTable table, String plan) {
        boolean ofPlans = table.columns().stream().anyMatch(c -> c.name().equals(PLAN));
        return IntStream.range(0, table.rows().size()).mapToObj(r -> new ResultLine(table, r))
                .filter(l -> !ofPlans || plan.equals(l.text(PLAN))).toList();
    }

    String text(String column) {
        Object cell = table.cell(row, column);
        return cell == null ? "" : cell.toString();
    }

    OptionalDouble number(String column) {
        return table.cell(row, column) instanceof Number number ? OptionalDouble.of(number.doubleValue()) : OptionalDouble.empty();
    }

    OptionalInt year(String column) {
        return table.cell(row, column) instanceof Number number ? OptionalInt.of(number.intValue()) : OptionalInt.empty();
    }

    static String unit(List<ResultLine> lines, String column) {
        return lines.isEmpty() ? "" : lines.get(0).table.columns().get(lines.get(0).table.column(column)).unit();
    }
}
