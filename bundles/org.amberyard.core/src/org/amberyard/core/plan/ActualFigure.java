package org.amberyard.core.plan;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.NominalCosts;

/** A figure of a year that a plan foresees and that meters, bills and books tell when the year is over. */
public enum ActualFigure {
    /** Energy at the meter for charging, ports at rest included, kWh. */
    ELECTRICITY(YearFigures::electricityKwh, year -> year.plan().yards().get(year.year()).yardKwh()),
    /** Bills for it, money of the year. */
    ELECTRICITY_COST(YearFigures::electricityCost, year -> year.cost(CostCategory.ELECTRIC_ENERGY, CostCategory.ELECTRIC_DEMAND,
            CostCategory.ELECTRIC_FIXED)),
    /** Fuel of engines, idling included, and of heaters, L; all kinds of fuel together. */
    FUEL(YearFigures::fuelL, PlanYear::fuelL),
    /** What it costs, money of the year. */
    FUEL_COST(YearFigures::fuelCost, year -> year.cost(CostCategory.FUEL, CostCategory.HEATER_FUEL)),
    /** Parts and labour, money of the year. */
    UPKEEP(YearFigures::upkeepCost, year -> year.cost(CostCategory.UPKEEP));

    private final Function<YearFigures, OptionalDouble> figure;
    private final ToDoubleFunction<PlanYear> planned;

    ActualFigure(Function<YearFigures, OptionalDouble> figure, ToDoubleFunction<PlanYear> planned) {
        this.figure = figure;
        this.planned = planned;
    }

    private record PlanYear(PlanResult plan, int year) {

        double fuelL() {
            return plan.fleet().years().stream().filter(y -> y.year() == year)
                    .mapToDouble(y -> y.use().fuelL() + y.use().heaterFuelL()).sum();
        }

        double cost(CostCategory... categories) {
            NominalCosts costs = new NominalCosts(plan.ledger());
            return Arrays.stream(categories).mapToDouble(c -> costs.amount(year, c)).sum();
        }
    }

    /** What came of it; empty where nobody knows. */
    public OptionalDouble actual(ActualYear of) {
        return figure.apply(of.came());
    }

    /** What a plan foresees in a year; empty outside the years of the study. */
    public OptionalDouble planned(PlanResult plan, int year) {
        return year >= 0 && year < plan.yards().size() ? OptionalDouble.of(planned.applyAsDouble(new PlanYear(plan, year)))
                : OptionalDouble.empty();
    }

    /** What a plan foresees for a year that is over, or what was foreseen for a year before the study; empty where that is not known. */
    public OptionalDouble foreseen(PlanResult plan, ActualYear of) {
        return of.isKept() ? figure.apply(of.foreseen()) : planned(plan, of.year());
    }

    /** What came of it less what was foreseen; empty where one of them is not known. */
    public OptionalDouble difference(PlanResult plan, ActualYear of) {
        OptionalDouble foreseen = foreseen(plan, of);
        OptionalDouble came = actual(of);
        return foreseen.isPresent() && came.isPresent() ? OptionalDouble.of(came.getAsDouble() - foreseen.getAsDouble())
                : OptionalDouble.empty();
    }

    /** The difference over what was foreseen; empty where one of them is not known or nothing was foreseen. */
    public OptionalDouble differenceShare(PlanResult plan, ActualYear of) {
        OptionalDouble difference = difference(plan, of);
        double foreseen = foreseen(plan, of).orElse(0);
        return difference.isPresent() && foreseen != 0 ? OptionalDouble.of(difference.getAsDouble() / foreseen)
                : OptionalDouble.empty();
    }
}
