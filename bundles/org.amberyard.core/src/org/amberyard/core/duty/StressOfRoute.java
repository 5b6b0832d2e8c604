package org.amberyard.core.duty;

import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.battery.FullCycleCount;
import org.amberyard.core.battery.PackStress;
import org.amberyard.core.battery.Rainflow;

/**
 * What a year on a route does to a pack: the normal day of each month with its charging, walked with a new pack that starts
 * full, as often as it is driven; on all other days the pack stands plugged in at its storage charge in the month's mean air.
 *
 * <p>The bus is plugged in when its day is over and charges at once. Swings within a run, of braking energy, are too shallow to
 * be counted as cycles of their own.
 */
final class StressOfRoute {
    private static final double HOURS_PER_DAY = 24;
    /** Swing and power of a bus without a route of its own; common practice, no source. */
    private static final double PARKED_SWING = 0.5;
    private static final double PARKED_POWER_PER_HOUR = 0.25;

    private final Climate climate;
    private final BatterySpec battery;
    private final List<PackStress.Dwell> dwells = new ArrayList<>();
    private final List<PackStress.Cycle> cycles = new ArrayList<>();

    private StressOfRoute(Climate climate, BatterySpec battery) {
        this.climate = climate;
        this.battery = battery;
    }

    /** A year of a route. */
    static PackStress of(RouteUse use, Climate climate, BatterySpec battery, BlockCheck check) {
        StressOfRoute stress = new StressOfRoute(climate, battery);
        for (int month = 0; month < Climate.MONTHS; month++) {
            int wanted = month;
            List<RouteUse.NormalDay> days = use.normalDays().stream().filter(d -> d.month() == wanted).toList();
            days.forEach(d -> stress.addDay(d, check));
            stress.addIdle(month, days.stream().mapToInt(RouteUse.NormalDay::days).sum());
        }
        return stress.of(FullCycleCount.of(use.year().dischargedKwh(), battery.nominalKwh()));
    }

    /** A year of a bus that has no route but some driving. */
    static PackStress parked(Climate climate, BatterySpec battery, double fullCycles) {
        StressOfRoute stress = new StressOfRoute(climate, battery);
        for (int month = 0; month < Climate.MONTHS; month++) {
            stress.addIdle(month, 0);
        }
        double depth = PARKED_SWING * battery.usableShare();
        stress.cycles.add(new PackStress.Cycle(depth, battery.cellShare(1 - PARKED_SWING / 2), fullCycles / depth,
                PARKED_POWER_PER_HOUR));
        return stress.of(fullCycles);
    }

    private PackStress of(double fullCycles) {
        return new PackStress(dwells, cycles, fullCycles);
    }

    private void addIdle(int month, int drivenDays) {
        double days = Math.max(0, Month.of(month + 1).minLength() - drivenDays);
        double airC = meanAirC(month);
        if (days > 0) {
            add(battery.heat().meanStandingC(airC, airC, HOURS_PER_DAY, true), battery.life().storageShare(),
                    days * HOURS_PER_DAY);
        }
    }

    private double meanAirC(int month) {
        return climate.months().get(month).normal().meanAirC();
    }

    private void addDay(RouteUse.NormalDay day, BlockCheck check) {
        List<BlockCheck.Moment> moments = check.moments(day.block(), battery, 1);
        List<DayBlock.Leg> legs = day.block().legs();
        for (int place = 0; place < legs.size(); place++) {
            DayBlock.Leg leg = legs.get(place);
            BlockCheck.Moment arrival = moments.get(2 * place + 1);
            BlockCheck.Moment next = moments.get(2 * place + 2);
            add(leg.packC(), (moments.get(2 * place).chargeShare() + arrival.chargeShare()) / 2,
                    day.days() * hours(leg.departureMin(), leg.arrivalMin()));
            addStand(day, leg, arrival, next, last(day, leg) || check.midday() && leg.yardAfter(), check.batteryKw());
        }
        addCycles(day, moments);
    }

    private void addStand(RouteUse.NormalDay day, DayBlock.Leg leg, BlockCheck.Moment arrival, BlockCheck.Moment next,
            boolean plugged, double batteryKw) {
        double hours = hours(arrival.minute(), next.minute());
        if (hours > 0) {
            double packC = battery.heat().meanStandingC(leg.packC(), meanAirC(day.month()), hours, plugged);
            double gained = next.chargeShare() - arrival.chargeShare();
            double charging = gained > 0 ? Math.min(hours, gained * battery.usableKwh(1) / batteryKw) : 0;
            add(last(day, leg) ? day.block().nightPackC() : packC, arrival.chargeShare() + gained / 2, day.days() * charging);
            add(packC, next.chargeShare(), day.days() * (hours - charging));
        }
    }

    private static boolean last(RouteUse.NormalDay day, DayBlock.Leg leg) {
        List<DayBlock.Leg> legs = day.block().legs();
        return leg == legs.get(legs.size() - 1);
    }

    private static double hours(double fromMin, double toMin) {
        return Math.max(0, toMin - fromMin) / 60;
    }

    private void add(double packC, double chargeShare, double hoursPerYear) {
        if (hoursPerYear > 0) {
            dwells.add(new PackStress.Dwell(packC, battery.cellShare(Math.max(0, chargeShare)), hoursPerYear));
        }
    }

    private void addCycles(RouteUse.NormalDay day, List<BlockCheck.Moment> moments) {
        double drivenHours = day.block().legs().stream().mapToDouble(l -> hours(l.departureMin(), l.arrivalMin())).sum();
        double powerPerHour = drivenHours > 0 ? Math.max(0, day.block().batteryKwh()) / drivenHours / battery.nominalKwh() : 0;
        double[] charge = moments.stream().mapToDouble(m -> Math.max(0, m.chargeShare())).toArray();
        for (Rainflow.Cycle cycle : Rainflow.of(charge)) {
            cycles.add(new PackStress.Cycle(cycle.range() * battery.usableShare(), battery.cellShare(cycle.mean()),
                    cycle.count() * day.days(), powerPerHour));
        }
    }
}
