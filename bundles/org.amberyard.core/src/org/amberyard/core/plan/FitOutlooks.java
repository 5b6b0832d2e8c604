package org.amberyard.core.plan;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.duty.BlockCheck;
import org.amberyard.core.duty.Climate;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.duty.RouteUse;

/** Finds the outlooks of fits and keeps them; they hang on no price. */
final class FitOutlooks {
    private static final int DAY_MIN = 24 * 60;

    private final StudyInput study;
    private final DutyTable duty;
    private final Map<RouteFit, FitOutlook> found = new HashMap<>();

    FitOutlooks(StudyInput study, DutyTable duty) {
        this.study = study;
        this.duty = duty;
    }

    synchronized FitOutlook of(RouteFit fit) {
        return found.computeIfAbsent(fit, this::find);
    }

    private FitOutlook find(RouteFit fit) {
        boolean midday = study.middayCharging();
        return new FitOutlook(fit, failing(fit, 1, fit.whenNew(midday)), failing(fit, fit.agedHealth(), fit.whenAged(midday)),
                worstAirC(fit), leastMiddayMin(fit));
    }

    /** Where the worst day is done, so are all others. */
    private FailingDays failing(RouteFit fit, double health, BlockCheck.Outcome worst) {
        return worst.passes() ? FailingDays.NONE : FailingDays.of(study, duty, fit, health);
    }

    private double worstAirC(RouteFit fit) {
        BlockCheck check = RouteFitting.check(study, fit.batteryKw(), study.middayCharging());
        RouteFitting.Day day = RouteFitting.worst(RouteFitting.days(use(fit), check, battery(fit), fit.agedHealth()));
        Climate.MonthWeather month = study.duty().climate().months().get(day.month());
        return (day.cold() ? month.coldest() : month.hottest()).meanAirC();
    }

    private OptionalInt leastMiddayMin(RouteFit fit) {
        if (fit.agedOvernight().passes() || !fit.agedMidday().passes()) {
            return OptionalInt.empty();
        }
        int fails = 0;
        int passes = DAY_MIN;
        while (passes - fails > 1) {
            int probe = (fails + passes) / 2;
            if (passesWith(fit, probe)) {
                passes = probe;
            } else {
                fails = probe;
            }
        }
        return OptionalInt.of(passes);
    }

    private boolean passesWith(RouteFit fit, int minutes) {
        BlockCheck check = RouteFitting.check(study, fit.batteryKw(), true).withMiddayHours(minutes / 60.0);
        List<RouteFitting.Day> days = RouteFitting.days(use(fit), check, battery(fit), fit.agedHealth());
        return days.stream().allMatch(RouteFitting.Day::passes);
    }

    private RouteUse use(RouteFit fit) {
        return duty.use(fit.route(), fit.type()).orElseThrow();
    }

    private BatterySpec battery(RouteFit fit) {
        return study.types().get(fit.type()).electric().orElseThrow().battery();
    }
}
