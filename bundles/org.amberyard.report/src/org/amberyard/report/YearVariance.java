package org.amberyard.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.units.UnitSystem;

/**
 * A figure of a year that is over beside what a plan foresaw, as the table “Plan against actual” has it.
 *
 * @param year fiscal year
 * @param figure the figure, with its unit
 * @param money true for amounts of money
 * @param planned what the plan foresaw
 * @param actual what came of it
 */
public record YearVariance(int year, String figure, boolean money, double planned, double actual) {
    private static final String TABLE = "plan_against_actual";
    private static final String PLANNED = "_planned";
    private static final String PLANNED_LABEL = ", planned";

    /** Actual less planned. */
    public double difference() {
        return actual - planned;
    }

    /** The difference over what was planned; NaN where nothing was. */
    public double share() {
        return planned == 0 ? Double.NaN : difference() / planned;
    }

    /**
     * How the first years of a study went beside a plan; figures that nobody knows are left out.
     *
     * @param plan place of the plan
     * @param years number of years that are over
     */
    public static List<YearVariance> of(StudyResult result, int plan, int years, UnitSystem system) {
        ResultTable table = ResultTables.of(ResultTables.place(TABLE), result, system, Progress.NONE);
        String name = result.plans().get(plan).name();
        List<YearVariance> all = new ArrayList<>();
        for (int row = 0; row < table.rows().size(); row++) {
            int year = ((Number) table.cell(row, "year")).intValue();
            boolean over = year >= result.input().baseYear() && year < result.input().baseYear() + years;
            if (over && Objects.equals(table.cell(row, "plan"), name)) {
                addFigures(table, row, year, all);
            }
        }
        return all;
    }

    private static void addFigures(ResultTable table, int row, int year, List<YearVariance> all) {
        for (ResultColumn column : table.columns()) {
            if (column.name().endsWith(PLANNED)) {
                String of = column.name().substring(0, column.name().length() - PLANNED.length());
                Object planned = table.cell(row, column.name());
                Object actual = table.cell(row, of + "_actual");
                if (planned instanceof Number then && actual instanceof Number now) {
                    all.add(new YearVariance(year, column.header().replace(PLANNED_LABEL, ""), column.type() == ResultColumn.Type.MONEY,
                            then.doubleValue(), now.doubleValue()));
                }
            }
        }
    }
}
