package org.amberyard.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.amberyard.core.plan.ActualFigure;
import org.amberyard.core.plan.ActualYear;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.Unit;

/** Table of what each plan foresees for years that are over beside what came of them. */
final class ActualTable {
    private static final String FORESEEN = "foreseen by this study";
    private static final String KEPT = "kept from before the base year was rolled";
    private static final String BEFORE = "none: before the base year";
    private static final String AFTER = "none: after the last year";

    private ActualTable() {
    }

    /** A year that is over, held against a plan; one of before the study against the plan whose figures are kept, once. */
    record OfActual(StudyResult result, PlanResult plan, ActualYear actual) {
        static List<OfActual> all(StudyResult result) {
            List<OfActual> rows = new ArrayList<>();
            for (PlanResult plan : result.plans()) {
                result.input().actuals().stream().filter(a -> !a.isKept() || plan == result.plans().get(0))
                        .forEach(a -> rows.add(new OfActual(result, plan, a)));
            }
            return rows;
        }

        String planName() {
            return actual.isKept() ? actual.foreseenBy() : plan.name();
        }

        String plannedBy() {
            int year = actual.year();
            return actual.isKept() ? KEPT : year < 0 ? BEFORE : year < result.input().years() ? FORESEEN : AFTER;
        }
    }

    static TableDefinition<OfActual> planAgainstActual() {
        TableDefinition<OfActual> table = new TableDefinition<>("plan_against_actual", "Plan against actual", OfActual::all)
                .text("plan", "Plan", "Name of the plan; the one that was carried out tells how far its figures were off.",
                        OfActual::planName)
                .year("year", "Year", "Fiscal year that is over; amounts are in money of the year, whatever the study states. Years "
                        + "before the base year have the planned figures that were kept when the study was rolled.",
                        r -> r.result().input().baseYear() + r.actual().year())
                .heads()
                .text("planned_figures", "Planned figures", "Whether this study foresees the year, or keeps what the study foresaw "
                        + "that was rolled to a later base year.", OfActual::plannedBy);
        amounts(table, ActualFigure.ELECTRICITY, Unit.KILOWATT_HOUR, "Electricity",
                "Energy at the meter for charging, ports at rest included");
        amounts(table, ActualFigure.ELECTRICITY_COST, Unit.MONEY, "Electric bills", "Electric bills for charging");
        amounts(table, ActualFigure.FUEL, Unit.LITRE, "Fuel", "Fuel of engines, idling included, and of heaters");
        amounts(table, ActualFigure.FUEL_COST, Unit.MONEY, "Fuel cost", "What that fuel costs");
        amounts(table, ActualFigure.UPKEEP, Unit.MONEY, "Upkeep", "Parts and labour for the buses");
        return table;
    }

    private static void amounts(TableDefinition<OfActual> table, ActualFigure figure, Unit unit, String label, String meaning) {
        String name = figure.name().toLowerCase(Locale.ROOT);
        add(table, unit, name + "_planned", label + ", planned", meaning + ", as the plan foresees it.",
                r -> figure.foreseen(r.plan(), r.actual()));
        add(table, unit, name + "_actual", label + ", actual", meaning + ", as entered; no figure where nobody knows it.",
                r -> figure.actual(r.actual()));
        add(table, unit, name + "_difference", label + ", difference", "Actual less planned.",
                r -> figure.difference(r.plan(), r.actual()));
        add(table, Unit.SHARE, name + "_difference_share", label + ", difference over planned", "Difference over planned; no figure "
                + "where the plan foresees nothing.", r -> figure.differenceShare(r.plan(), r.actual()));
    }

    private static void add(TableDefinition<OfActual> table, Unit unit, String name, String label, String meaning,
            Function<OfActual, OptionalDouble> value) {
        if (unit == Unit.MONEY) {
            table.optionalMoney(name, label, meaning, value);
        } else {
            table.optional(name, label, unit, meaning, value);
        }
    }
}
