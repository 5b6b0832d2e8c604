package org.amberyard.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.units.UnitSystem;

/** The figures of plans side by side: the same rows for all, a column for each plan. */
public final class PlansBeside {

    /** Tables whose figures are set side by side, in their order. */
    private static final List<String> TABLES = List.of("headline", "cash_by_year", "measures", "fleet_by_year", "service_by_year",
            "emissions_by_year", "budget_by_year");
    private static final String PLAN = "plan";

    /**
     * A figure of all plans.
     *
     * @param section what it belongs to
     * @param figure what it is, with its year where it has one
     * @param unit its unit
     * @param values its values by plan; null where a plan has no such figure
     */
    public record Row(String section, String figure, String unit, List<Object> values) {
        public Row {
            values = Collections.unmodifiableList(new ArrayList<>(values));
        }

        /** True when not all plans have the same value. */
        public boolean differs() {
            return values.stream().distinct().count() > 1;
        }
    }

    private final StudyResult result;
    private final UnitSystem system;
    private final Map<List<String>, Object[]> rows = new LinkedHashMap<>();

    private PlansBeside(StudyResult result, UnitSystem system) {
        this.result = result;
        this.system = system;
    }

    /** The figures of all plans of a result, in the user's units. */
    public static List<Row> of(StudyResult result, UnitSystem system) {
        PlansBeside beside = new PlansBeside(result, system);
        beside.addTable(TABLES.get(0));
        beside.addCategories();
        TABLES.stream().skip(1).forEach(beside::addTable);
        return beside.rows.entrySet().stream()
                .map(r -> new Row(r.getKey().get(0), r.getKey().get(1), r.getKey().get(2), Arrays.asList(r.getValue()))).toList();
    }

    private void addCategories() {
        for (CostCategory category : CostCategory.values()) {
            boolean any = result.plans().stream().anyMatch(p -> p.ledger().presentValue(category) != 0);
            for (int plan = 0; any && plan < result.plans().size(); plan++) {
                put("Present cost by category", category.label(), result.input().currency(), plan,
                        result.plans().get(plan).ledger().presentValue(category));
            }
        }
    }

    private void addTable(String name) {
        ResultTable table = ResultTables.of(ResultTables.place(name), result, system, Progress.NONE);
        List<String> plans = result.plans().stream().map(p -> p.name()).toList();
        int firstFigure = IntStream.range(0, table.columns().size()).filter(c -> isFigure(table.columns().get(c))).findFirst().orElse(0);
        for (List<Object> cells : table.rows()) {
            int plan = plans.indexOf(cells.get(table.column(PLAN)));
            String key = key(table, cells, firstFigure);
            for (int column = firstFigure; plan >= 0 && column < cells.size(); column++) {
                ResultColumn of = table.columns().get(column);
                if (isFigure(of)) {
                    put(table.title(), key.isEmpty() ? of.label() : key + ": " + of.label(), of.unit(), plan, cells.get(column));
                }
            }
        }
    }

    private static boolean isFigure(ResultColumn column) {
        return column.type() != ResultColumn.Type.TEXT && !column.name().equals("year");
    }

    private static String key(ResultTable table, List<Object> cells, int before) {
        List<String> parts = IntStream.range(0, before).filter(c -> !table.columns().get(c).name().equals(PLAN))
                .filter(c -> !table.columns().get(c).name().equals("is_baseline"))
                .mapToObj(cells::get).filter(Objects::nonNull).map(Object::toString).toList();
        return String.join(", ", parts);
    }

    private void put(String section, String figure, String unit, int plan, Object value) {
        rows.computeIfAbsent(List.of(section, figure, unit), k -> new Object[result.plans().size()])[plan] = value;
    }
}
