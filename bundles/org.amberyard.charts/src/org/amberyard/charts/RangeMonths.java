package org.amberyard.charts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.amberyard.core.duty.BlockCheck;
import org.amberyard.core.duty.Climate;
import org.amberyard.core.plan.RouteAnswer;
import org.amberyard.core.plan.RouteFit;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.MonthNames;
import org.amberyard.core.units.UnitSystem;

/** The range margin of every route on the worst day of every month. */
final class RangeMonths {
    private final StudyInput study;
    private final RangeWords words;
    private final List<Row> rows;

    RangeMonths(StudyResult result, int plan, UnitSystem system) {
        this.study = result.input();
        this.words = new RangeWords(result, plan, system);
        this.rows = RouteAnswer.of(result, plan).stream().map(this::row).toList();
    }

    /**
     * A route.
     *
     * @param answer which type stands for it
     * @param label route and type
     * @param cells months from January to December
     */
    record Row(RouteAnswer answer, String label, List<Cell> cells) {

        /** The month with the least margin; empty when none is judged. */
        Optional<Cell> worst() {
            return cells.stream().filter(c -> c.standing().judged()).min(Cell.WORST_FIRST);
        }
    }

    /**
     * A month of a route.
     *
     * @param month month, 0 for January
     * @param standing whether the bus gets through
     * @param whenNew margin with a new pack in the unit shown, not a number where nothing is judged
     * @param whenAged margin with an aged pack in the unit shown, not a number where nothing is judged
     * @param days equal days in a row that the bus drives until it fails; the whole week where it does not
     */
    record Cell(int month, MonthStanding standing, double whenNew, double whenAged, int days) {
        static final Comparator<Cell> WORST_FIRST =
                Comparator.comparing(Cell::standing).reversed().thenComparing(Cell::margin);

        static Cell without(int month, MonthStanding standing) {
            return new Cell(month, standing, Double.NaN, Double.NaN, 0);
        }

        boolean failsLaterThanTheFirstDay() {
            return days > 1 && (standing == MonthStanding.NEW_ONLY || standing == MonthStanding.FAILS);
        }

        /** The margin that decides: that with a new pack where it fails already, else that with an aged one. */
        double margin() {
            return standing == MonthStanding.FAILS ? whenNew : whenAged;
        }
    }

    List<Row> rows() {
        return rows;
    }

    String caption() {
        return words.caption();
    }

    String route(Row row) {
        return words.route(row.answer());
    }

    String unit() {
        return words.unit();
    }

    /** Words of a cell, line by line. */
    List<String> lines(Cell cell) {
        List<String> lines = new ArrayList<>(cell.standing().lines(Figures.signed(cell.margin()) + " " + unit()));
        if (cell.failsLaterThanTheFirstDay()) {
            lines.set(lines.size() - 1, lines.get(lines.size() - 1) + " day " + cell.days());
        }
        return lines;
    }

    private Row row(RouteAnswer answer) {
        List<Cell> cells = IntStream.range(0, Climate.MONTHS)
                .mapToObj(month -> answer.fit().map(fit -> cell(fit, month))
                        .orElse(Cell.without(month, MonthStanding.NOT_JUDGED)))
                .toList();
        return new Row(answer, words.label(answer), cells);
    }

    private Cell cell(RouteFit fit, int month) {
        return fit.months().stream().filter(m -> m.month() == month).findFirst().map(this::cell)
                .orElse(Cell.without(month, MonthStanding.NOT_DRIVEN));
    }

    private Cell cell(RouteFit.Month month) {
        MonthStanding standing = standing(month.whenNew(), month.whenAged());
        int days = (standing == MonthStanding.FAILS ? month.whenNew() : month.whenAged()).days();
        return new Cell(month.month(), standing, words.shown(month.whenNew().marginKm()),
                words.shown(month.whenAged().marginKm()), days);
    }

    private static MonthStanding standing(BlockCheck.Outcome whenNew, BlockCheck.Outcome whenAged) {
        if (!whenNew.passes()) {
            return MonthStanding.FAILS;
        }
        return whenAged.passes() ? MonthStanding.FOR_LIFE : MonthStanding.NEW_ONLY;
    }

    /** A route's month in words, with what would help where it fails. */
    String tip(Row row, Cell cell) {
        String failing = words.failing(row.answer());
        return row.label() + ": " + inMonth(cell) + (failing.isEmpty() ? "" : "\n" + failing);
    }

    /** A month and its margin in words. */
    String inMonth(Cell cell) {
        String margin = cell.standing().sentence(Figures.size(cell.margin()) + " " + unit());
        return MonthNames.full(cell.month()) + ", " + margin
                + (cell.failsLaterThanTheFirstDay() ? " on day " + cell.days() + " of such days in a row" : "");
    }

    ChartData data() {
        List<List<Object>> lines = new ArrayList<>();
        for (Row row : rows) {
            for (Cell cell : row.cells()) {
                List<Object> line = new ArrayList<>(List.of(route(row)));
                line.add(row.answer().fit().map(f -> study.types().get(f.type()).name()).orElse(null));
                line.add(row.answer().electric() ? "yes" : "no");
                line.add(MonthNames.full(cell.month()));
                line.add(cell.standing().judged() ? cell.whenNew() : null);
                line.add(cell.standing().judged() ? cell.whenAged() : null);
                line.add(cell.standing().label());
                lines.add(line);
            }
        }
        String unit = " (" + unit() + ")";
        return new ChartData(List.of("Route", "Electric type", "Electric in the plan", "Month",
                "Margin with a new pack" + unit, "Margin with an aged pack" + unit, "Answer"), lines);
    }
}
