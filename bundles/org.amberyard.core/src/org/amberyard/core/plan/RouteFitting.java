package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.battery.FullCycleCount;
import org.amberyard.core.battery.PackReplacement;
import org.amberyard.core.duty.BlockCheck;
import org.amberyard.core.duty.DayBlock;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.duty.ElectricSpec;
import org.amberyard.core.duty.RouteUse;

/** Judges every route with every electric type whose body fits it. */
public final class RouteFitting {
    private static final int LONGEST_LIFE_YEARS = 60;

    private final StudyInput study;
    private final DutyTable duty;

    private RouteFitting(StudyInput study, DutyTable duty) {
        this.study = study;
        this.duty = duty;
    }

    /** Fits by route, then by type. */
    public static List<RouteFit> of(StudyInput study, DutyTable duty) {
        RouteFitting fitting = new RouteFitting(study, duty);
        List<RouteFit> fits = new ArrayList<>();
        for (int route = 0; route < study.duty().routes().size(); route++) {
            for (int type = 0; type < study.types().size(); type++) {
                fitting.fit(route, type).ifPresent(fits::add);
            }
        }
        return List.copyOf(fits);
    }

    private Optional<RouteFit> fit(int route, int type) {
        Optional<ElectricSpec> electric = study.types().get(type).electric();
        Optional<RouteUse> use = duty.use(route, type);
        if (electric.isEmpty() || use.isEmpty() || use.get().coldestDays().stream().allMatch(DayBlock::isEmpty)) {
            return Optional.empty();
        }
        return Optional.of(fit(route, type, electric.get().battery(), use.get()));
    }

    private RouteFit fit(int route, int type, BatterySpec battery, RouteUse use) {
        BlockCheck overnight = check(0);
        BlockCheck midday = check(study.depot().everyBusBatteryKw(study.types().get(type)));
        double aged = battery.endOfLifeShare();
        WorstDay worst = worstDay(use, overnight, battery);
        BlockCheck.Outcome newOvernight = overnight.of(worst.day(), battery, 1);
        BlockCheck.Outcome newMidday = midday.of(worst.day(), battery, 1);
        BlockCheck.Outcome agedOvernight = overnight.of(worst.day(), battery, aged);
        BlockCheck.Outcome agedMidday = midday.of(worst.day(), battery, aged);
        int failing = firstFailingAge(use, battery, worst.day(), study.depot().middayCharging() ? midday : overnight);
        return new RouteFit(route, type, worst.month(), newOvernight, newMidday, agedOvernight, agedMidday, failing,
                verdict(newOvernight, newMidday, agedOvernight, agedMidday));
    }

    private BlockCheck check(double batteryKw) {
        return new BlockCheck(batteryKw, study.rules().reserveShare());
    }

    private record WorstDay(int month, DayBlock day) {
    }

    /** The coldest or hottest operated day with the least margin in the year. */
    private static WorstDay worstDay(RouteUse use, BlockCheck check, BatterySpec battery) {
        WorstDay worst = null;
        double least = Double.POSITIVE_INFINITY;
        for (int month = 0; month < use.coldestDays().size(); month++) {
            for (DayBlock day : List.of(use.coldestDays().get(month), use.hottestDays().get(month))) {
                double margin = day.isEmpty() ? Double.POSITIVE_INFINITY : check.of(day, battery, 1).marginKwh();
                if (margin < least) {
                    least = margin;
                    worst = new WorstDay(month, day);
                }
            }
        }
        return worst;
    }

    private int firstFailingAge(RouteUse use, BatterySpec battery, DayBlock day, BlockCheck check) {
        double cyclesPerYear = FullCycleCount.of(use.year().batteryKwh(), battery.nominalKwh());
        for (int age = 0; age <= LONGEST_LIFE_YEARS; age++) {
            double cycles = cyclesPerYear * age;
            if (age > 0 && PackReplacement.due(battery, age, cycles).isPresent()) {
                return -1;
            }
            if (!check.of(day, battery, battery.fade().health(age, cycles)).passes()) {
                return age;
            }
        }
        return -1;
    }

    private static RouteFit.Verdict verdict(BlockCheck.Outcome newOvernight, BlockCheck.Outcome newMidday,
            BlockCheck.Outcome agedOvernight, BlockCheck.Outcome agedMidday) {
        if (agedOvernight.passes()) {
            return RouteFit.Verdict.FOR_LIFE;
        }
        if (agedMidday.passes()) {
            return newOvernight.passes() ? RouteFit.Verdict.MIDDAY_WHEN_AGED : RouteFit.Verdict.MIDDAY_ALWAYS;
        }
        return newMidday.passes() ? RouteFit.Verdict.ONLY_WHEN_NEW : RouteFit.Verdict.FAILS;
    }
}
