package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import org.amberyard.core.duty.BlockCheck;
import org.amberyard.core.duty.ElectricSpec;
import org.amberyard.core.duty.FuelKind;
import org.amberyard.core.duty.Heater;
import org.amberyard.core.duty.RouteUse;
import org.amberyard.core.duty.YardHabit;

/**
 * What the yard and the heater can do for a route that fails, alone and together. Measures together are left out where fewer of
 * them cure or do as much.
 */
final class JoinedMeasures {
    private final FailedRoute failed;
    private final StudyInput study;
    private final YardHabit habit;
    private final List<Remedy> found = new ArrayList<>();

    private JoinedMeasures(FailedRoute failed) {
        this.failed = failed;
        this.study = failed.result().input();
        this.habit = study.duty().habit();
    }

    /** All that help; fewer measures come before more. */
    static List<Remedy> of(FailedRoute failed) {
        JoinedMeasures measures = new JoinedMeasures(failed);
        List<Remedy.Measure> offered = measures.offered();
        for (int mask = 1; mask < 1 << offered.size(); mask++) {
            Set<Remedy.Measure> joined = EnumSet.noneOf(Remedy.Measure.class);
            for (int place = 0; place < offered.size(); place++) {
                if ((mask >> place & 1) == 1) {
                    joined.add(offered.get(place));
                }
            }
            measures.add(joined);
        }
        return measures.found;
    }

    private List<Remedy.Measure> offered() {
        List<Remedy.Measure> offered = new ArrayList<>();
        if (!habit.precondition()) {
            offered.add(Remedy.Measure.PRECONDITION);
        }
        if (!habit.midday()) {
            offered.add(Remedy.Measure.MIDDAY_CHARGE);
        }
        if (failed.electric().heater().source() != Heater.Source.FUEL_FIRED
                && failed.type().prices().fuelFiredHeater().isPresent() && failed.cost().prices(FuelKind.DIESEL)) {
            offered.add(Remedy.Measure.FUEL_FIRED_HEAT);
        }
        return offered;
    }

    private void add(Set<Remedy.Measure> joined) {
        RouteFit fit = failed.fit();
        boolean fired = joined.contains(Remedy.Measure.FUEL_FIRED_HEAT);
        YardHabit with = new YardHabit(study.middayCharging() || joined.contains(Remedy.Measure.MIDDAY_CHARGE),
                habit.precondition() || joined.contains(Remedy.Measure.PRECONDITION), habit.portKw());
        RouteUse driven = failed.result().duty().variant(fit.route(), fit.type(), with, fired);
        BlockCheck check = failed.check(fit, with.midday());
        BlockCheck.Outcome after = RouteFitting
                .worst(RouteFitting.days(driven, check, failed.electric().battery(), fit.agedHealth())).outcome();
        if (!fewerDoAsMuch(joined, after)) {
            failed.remedy(new ArrayList<>(joined), fit.type(), OptionalInt.empty(), after, costPerYear(driven, check, fired))
                    .ifPresent(found::add);
        }
    }

    private double costPerYear(RouteUse driven, BlockCheck check, boolean fired) {
        VehicleTypeInput type = failed.type();
        ElectricSpec electric = failed.electric();
        ElectricSpec spec = fired ? electric.withHeater(electric.heater().fuelFired()) : electric;
        double heater = fired ? failed.cost().ofPrice(type.prices().fuelFiredHeater().orElseThrow(), type.prices()) : 0;
        return failed.cost().of(type, spec, driven, check) + heater;
    }

    private boolean fewerDoAsMuch(Set<Remedy.Measure> joined, BlockCheck.Outcome after) {
        return found.stream().filter(r -> joined.containsAll(r.measures()))
                .anyMatch(r -> r.cures() || !after.passes() && failed.doesAsMuch(r, after));
    }
}
