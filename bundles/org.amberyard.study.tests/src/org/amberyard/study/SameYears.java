package org.amberyard.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.amberyard.core.air.EmissionSource;
import org.amberyard.core.air.Pollutant;
import org.amberyard.core.finance.FinanceLine;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.FlowTime;
import org.amberyard.core.money.NominalCosts;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.VehicleYear;

/** Compares the years that two results of a plan share: money of each year by row and category, energy, emissions, health. */
final class SameYears {
    private static final double TOLERANCE = 1e-6;
    private static final double NOTHING = 1e-6;

    private final PlanResult before;
    private final PlanResult after;
    private final int rolled;
    private final Set<Integer> moved;
    private final List<String> differences = new ArrayList<>();
    private int compared;

    /**
     * @param rolled years by which the base year has moved
     * @param moved rows whose bus has moved there in the years that are over; their shop tasks fall in other months
     */
    SameYears(PlanResult before, PlanResult after, int rolled, Set<Integer> moved) {
        this.moved = moved;
        this.before = before;
        this.after = after;
        this.rolled = rolled;
    }

    /** Figures that differ in years before a year of the first result; what falls at the end of a study is left out. */
    List<String> differences(int until) {
        NominalCosts then = new NominalCosts(before.ledger());
        NominalCosts now = new NominalCosts(after.ledger());
        for (int year = rolled; year < until; year++) {
            for (CostCategory category : CostCategory.values()) {
                for (int row = 0; category.time() != FlowTime.END && row < before.ledger().rows().size(); row++) {
                    if (category != CostCategory.UPKEEP || !moved.contains(row)) {
                        same(year, category + " of row " + row, then.amount(row, year, category), now(now, row, year - rolled, category));
                    }
                }
            }
            compareEnergy(year);
            compareBuses(year);
            compareAir(year);
            compareDebts(year);
        }
        return differences;
    }

    /** A place that has gone from the list costs nothing; the yard stands behind the places. */
    private double now(NominalCosts now, int row, int year, CostCategory category) {
        int yard = after.ledger().rows().size() - 1;
        if (row == before.ledger().rows().size() - 1) {
            return now.amount(yard, year, category);
        }
        return row < yard ? now.amount(row, year, category) : 0;
    }

    /** Number of figures that were compared and are not zero. */
    int compared() {
        return compared;
    }

    private void compareEnergy(int year) {
        same(year, "energy at the meter", before.yards().get(year).yardKwh(), after.yards().get(year - rolled).yardKwh());
        same(year, "peak of the yard", before.yards().get(year).yardPeakKw(), after.yards().get(year - rolled).yardPeakKw());
    }

    private void compareBuses(int year) {
        List<VehicleYear> then = before.fleet().inYear(year);
        List<VehicleYear> now = after.fleet().inYear(year - rolled);
        same(year, "number of buses", then.size(), now.size());
        for (VehicleYear bus : then) {
            Optional<VehicleYear> other = now.stream().filter(v -> v.place() == bus.place()).findFirst();
            String name = " of place " + bus.place();
            same(year, "health" + name, bus.healthEnd(), other.map(VehicleYear::healthEnd).orElse(-1.0));
            same(year, "cycles" + name, bus.packCyclesEnd(), other.map(VehicleYear::packCyclesEnd).orElse(-1.0));
            same(year, "odometer" + name, bus.vehicle().odometerKm(), other.map(v -> v.vehicle().odometerKm()).orElse(-1.0));
            same(year, "fuel" + name, bus.use().fuelL(), other.map(v -> v.use().fuelL()).orElse(-1.0));
            same(year, "age" + name, bus.vehicle().ageYears(year), other.map(v -> v.vehicle().ageYears(year - rolled)).orElse(-1.0));
        }
    }

    private void compareAir(int year) {
        for (EmissionSource source : EmissionSource.values()) {
            for (Pollutant pollutant : Pollutant.values()) {
                if (before.air().get(year).emissions().of(source).known(pollutant)) {
                    same(year, pollutant + " of " + source, before.air().get(year).emissions().of(source).kg(pollutant),
                            after.air().get(year - rolled).emissions().of(source).kg(pollutant));
                }
            }
        }
    }

    private void compareDebts(int year) {
        for (FinanceLine line : FinanceLine.values()) {
            if (line != FinanceLine.DEBT_LEFT && line != FinanceLine.TAX_ON_WHAT_IS_LEFT) {
                same(year, line.toString(), before.finance().ledger().amount(year, line), after.finance().ledger().amount(year - rolled, line));
            }
        }
    }

    private void same(int year, String what, double then, double now) {
        compared += then != 0 ? 1 : 0;
        if (Math.abs(then - now) > TOLERANCE * Math.max(Math.abs(then), Math.abs(now)) + NOTHING) {
            differences.add("year " + year + ", " + what + ": " + then + " before, " + now + " after");
        }
    }
}
