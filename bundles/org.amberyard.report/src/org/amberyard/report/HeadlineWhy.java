package org.amberyard.report;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.IntFunction;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.amberyard.core.air.Pollutant;
import org.amberyard.core.air.WhyMass;
import org.amberyard.core.money.DiscountFactor;
import org.amberyard.core.plan.AirWhy;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.plan.VehicleYear;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.core.why.Derivation;
import org.amberyard.report.ResultRows.OfPlan;

/** How the single figures of a plan come about: by year and bus, down to the cells of its ledger and to what its buses emit. */
final class HeadlineWhy {
    private static final String OF_STUDY = "of the study";

    private final StudyResult result;
    private final OfPlan at;
    private final PlanResult plan;

    HeadlineWhy(OfPlan at) {
        this.result = at.result();
        this.at = at;
        this.plan = at.plan();
    }

    /** What is said in place of a comparison where the plan is the baseline. */
    static Derivation notCompared(OfPlan baseline) {
        return Derivation.of(baseline.plan().name(), Double.NaN, "", "the baseline is not compared with itself");
    }

    Derivation presentCost() {
        return presentCost(plan);
    }

    private Derivation presentCost(PlanResult of) {
        return new LedgerWhy(result, of).presentCost();
    }

    Derivation annualEquivalent() {
        Derivation rate = Derivation.of("Discount rate above inflation", result.input().money().rates().real(), Unit.SHARE.token(), OF_STUDY);
        Derivation years = Derivation.of("Years", result.input().years(), Unit.YEAR.token(), OF_STUDY);
        return Derivation.product("level yearly cost of " + plan.name(), Derivation.MONEY, presentCost(),
                DiscountFactor.whyCapitalRecovery(rate, years));
    }

    Derivation costPerDistance() {
        return over("cost per distance of " + plan.name(), plan.measures().costPerKm(), Unit.MONEY_PER_KM, "nothing is driven",
                () -> new DiscountedUse(result.input()).distance(this::distance));
    }

    Derivation costPerRiderDay() {
        return over("cost per rider and day of " + plan.name(), plan.measures().costPerRiderDay(), Unit.MONEY,
                "the riders of a route are not known", () -> new DiscountedUse(result.input()).riderDays());
    }

    /** The present cost over what is discounted as running costs are. */
    private Derivation over(String name, OptionalDouble cost, Unit unit, String none, Supplier<Derivation> divisor) {
        if (cost.isEmpty()) {
            return Derivation.of(name, Double.NaN, "", "no figure: " + none);
        }
        Derivation present = presentCost();
        Derivation by = divisor.get();
        return Derivation.of(name, cost.getAsDouble(), unit.token(), present.name() + " ÷ " + by.name(), present, by);
    }

    Derivation presentSaving() {
        return at.comparison().map(c -> Derivation.of("saving of " + against(), c.presentSaving(), Derivation.MONEY,
                "present cost of the baseline less that of the plan", presentCost(result.baseline()), presentCost()))
                .orElseGet(() -> notCompared(at));
    }

    private String against() {
        return plan.name() + " against " + result.baseline().name();
    }

    Derivation greenhouseGas() {
        return greenhouseGas(plan);
    }

    private Derivation greenhouseGas(PlanResult of) {
        AirWhy air = new AirWhy(result);
        Derivation kg = byYear("greenhouse gas of " + of.name(), WhyMass.KG, year -> air.total(of, year, Pollutant.CO2E));
        return tonnes(kg.name(), kg.value(), "kilograms ÷ 1,000", kg);
    }

    Derivation greenhouseGasSaving() {
        return at.comparison().map(c -> tonnes("greenhouse gas saved by " + against(), c.co2eSavingKg(), "that of the baseline less that of the plan",
                greenhouseGas(result.baseline()), greenhouseGas())).orElseGet(() -> notCompared(at));
    }

    /** In the unit of the columns. */
    private static Derivation tonnes(String name, double kg, String rule, Derivation... parts) {
        return Derivation.of(name, ColumnUnit.TONNE_OF_KG.show(kg, UnitSystem.METRIC), ColumnUnit.TONNE_OF_KG.symbol(UnitSystem.METRIC, ""), rule, parts);
    }

    Derivation distance() {
        return byYear("distance of " + plan.name(), Unit.KILOMETRE.token(), this::distance);
    }

    private Derivation distance(int year) {
        return byBus("distance", year, Unit.KILOMETRE, "runs of its route on the days that no spare covers, and its other distance",
                r -> r.use().km());
    }

    Derivation fuel() {
        return byYear("fuel of " + plan.name(), Unit.LITRE.token(), year -> byBus("fuel", year, Unit.LITRE, "burnt driving, idling and heating",
                r -> r.use().fuelL() + r.use().heaterFuelL()));
    }

    Derivation electricity() {
        return byYear("electricity of " + plan.name(), Unit.KILOWATT_HOUR.token(), year -> Derivation.of("energy at the meter in " + calendar(year),
                plan.yards().get(year).neededKwh(), Unit.KILOWATT_HOUR.token(), "what charging, heat from the grid and ports at rest take in the year"));
    }

    /** Something of each bus in a year; buses of which there is none are left out. */
    private Derivation byBus(String what, int year, Unit unit, String rule, ToDoubleFunction<VehicleYear> amount) {
        return Derivation.sum(what + " in " + calendar(year), unit.token(), plan.fleet().inYear(year).stream()
                .filter(r -> amount.applyAsDouble(r) != 0)
                .map(r -> Derivation.of(what + " of " + r.vehicle().unit(), amount.applyAsDouble(r), unit.token(), rule)).toList());
    }

    private Derivation byYear(String name, String unit, IntFunction<Derivation> ofYear) {
        List<Derivation> years = IntStream.range(0, result.input().years()).mapToObj(ofYear).toList();
        return Derivation.sum(name, unit, years);
    }

    private String calendar(int year) {
        return result.input().money().fiscal().name(result.input().baseYear() + year);
    }
}
