package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.duty.BlockCheck;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.duty.ElectricSpec;
import org.amberyard.core.duty.RouteUse;

/** Judges every route with every electric type whose body fits it. */
public final class RouteFitting {
    private final StudyInput study;
    private final DutyTable duty;

    private RouteFitting(StudyInput study, DutyTable duty) {
        this.study = study;
        this.duty = duty;
    }

    /** Fits with the port types on offer. */
    public static RouteFits of(StudyInput study, DutyTable duty) {
        RouteFitting fitting = new RouteFitting(study, duty);
        List<RouteFit> fits = new ArrayList<>();
        for (int route = 0; route < study.duty().routes().size(); route++) {
            for (int type = 0; type < study.types().size(); type++) {
                double batteryKw = study.types().get(type).countedKw(study.depot().ports());
                fitting.fit(route, type, batteryKw).ifPresent(fits::add);
            }
        }
        return new RouteFits(fits);
    }

    /** Fits with the ports that a plan has at the end of the study; those that the ports do not change are taken over. */
    static RouteFits withPorts(StudyInput study, DutyTable duty, RouteFits onOffer, PortFleet ports) {
        RouteFitting fitting = new RouteFitting(study, duty);
        List<RouteFit> fits = new ArrayList<>();
        for (RouteFit fit : onOffer.list()) {
            double batteryKw = ports.batteryKw(study.types().get(fit.type()), study.years() - 1);
            fits.add(batteryKw == fit.batteryKw() ? fit : fitting.fit(fit.route(), fit.type(), batteryKw).orElseThrow());
        }
        return new RouteFits(fits);
    }

    /** The check of a day's block by the rules of a study. */
    static BlockCheck check(StudyInput study, double batteryKw, boolean midday) {
        return new BlockCheck(batteryKw, study.depot().window(), midday, study.rules().reserveShare());
    }

    private Optional<RouteFit> fit(int route, int type, double batteryKw) {
        Optional<ElectricSpec> electric = study.types().get(type).electric();
        Optional<RouteUse> use = duty.use(route, type).filter(u -> !u.designDays().isEmpty());
        return electric.flatMap(e -> use.map(u -> fit(route, type, batteryKw, e.battery(), u)));
    }

    private RouteFit fit(int route, int type, double batteryKw, BatterySpec battery, RouteUse use) {
        BlockCheck overnight = check(study, batteryKw, false);
        BlockCheck midday = check(study, batteryKw, true);
        BlockCheck habit = study.middayCharging() ? midday : overnight;
        PackService service = PackService.of(battery, duty.packYears().of(use, battery, habit),
                study.types().get(type).prices().lifeYears());
        double aged = service.health(service.lastAge());
        List<Day> newOvernights = days(use, overnight, battery, 1);
        List<Day> newMiddays = days(use, midday, battery, 1);
        List<Day> agedOvernights = days(use, overnight, battery, aged);
        List<Day> agedMiddays = days(use, midday, battery, aged);
        Day newOvernight = worst(newOvernights);
        Day newMidday = worst(newMiddays);
        Day agedOvernight = worst(agedOvernights);
        Day agedMidday = worst(agedMiddays);
        int failing = (habit.midday() ? agedMidday : agedOvernight).passes() ? -1
                : firstFailingAge(use, battery, service, habit);
        return new RouteFit(route, type, batteryKw, newOvernight.month(), newOvernight.outcome(), newMidday.outcome(),
                agedOvernight.outcome(), agedMidday.outcome(), service.lastAge(), aged, failing,
                verdict(newOvernight, newMidday, agedOvernight, agedMidday),
                months(habit.midday() ? newMiddays : newOvernights, habit.midday() ? agedMiddays : agedOvernights));
    }

    private static List<RouteFit.Month> months(List<Day> whenNew, List<Day> whenAged) {
        return whenNew.stream().map(Day::month).distinct().map(month -> new RouteFit.Month(month,
                worstOf(whenNew, month).outcome(), worstOf(whenAged, month).outcome())).toList();
    }

    private static Day worstOf(List<Day> days, int month) {
        return worst(days.stream().filter(d -> d.month() == month).toList());
    }

    /** How a design day comes out. */
    record Day(int month, boolean cold, BlockCheck.Outcome outcome) {
        boolean passes() {
            return outcome.passes();
        }
    }

    /** All design days of a use, in their order. */
    static List<Day> days(RouteUse use, BlockCheck check, BatterySpec battery, double health) {
        return use.designDays().stream()
                .map(d -> new Day(d.month(), d.cold(), check.of(d.block(check.midday()), battery, health))).toList();
    }

    /** The worst of some days. */
    static Day worst(List<Day> days) {
        return days.stream().min(Comparator.comparing(Day::outcome, BlockCheck.Outcome.WORST_FIRST)).orElseThrow();
    }

    /** A pack that fails at the end of its service; health only falls, so one that passes then never fails. */
    private static int firstFailingAge(RouteUse use, BatterySpec battery, PackService service, BlockCheck check) {
        int age = 0;
        while (worst(days(use, check, battery, service.health(age))).passes()) {
            age++;
        }
        return age;
    }

    private static RouteFit.Verdict verdict(Day newOvernight, Day newMidday, Day agedOvernight, Day agedMidday) {
        if (agedOvernight.passes()) {
            return RouteFit.Verdict.FOR_LIFE;
        }
        if (agedMidday.passes()) {
            return newOvernight.passes() ? RouteFit.Verdict.MIDDAY_WHEN_AGED : RouteFit.Verdict.MIDDAY_ALWAYS;
        }
        return newMidday.passes() ? RouteFit.Verdict.ONLY_WHEN_NEW : RouteFit.Verdict.FAILS;
    }
}
