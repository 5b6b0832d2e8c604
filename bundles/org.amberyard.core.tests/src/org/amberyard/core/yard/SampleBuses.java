package org.amberyard.core.yard;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.battery.LinearFade;
import org.amberyard.core.charging.ChargeRule;
import org.amberyard.core.charging.PortUnit;
import org.amberyard.core.depot.Port;
import org.amberyard.core.duty.Climate;
import org.amberyard.core.duty.DayBlock;
import org.amberyard.core.duty.EnergyCauses;
import org.amberyard.core.duty.EnergyUse;
import org.amberyard.core.duty.RouteUse;
import org.amberyard.core.duty.SampleBus;
import org.amberyard.core.tariff.DayClass;

/** Invented buses, routes and yards for tests: runs at 6:30, 11:40 and 14:30, months without service in July. */
final class SampleBuses {
    static final Port AC = new Port("AC", false, 19.2, 0.88, 20, 0, 0, 10, 20, 0);
    static final Port DC = new Port("DC", true, 60, 0.92, 50, 0, 0, 10, 20, 0);
    static final BatterySpec PACK = SampleBus.battery(150, 0.004, 2000, 0.7, new LinearFade(0.01, 0));
    static final int JULY = 6;
    static final int STEPS = 96;
    private static final double[] DEPARTURES = {390, 700, 870};
    private static final Map<DayClass, Integer> DAYS = Map.of(DayClass.WEEKDAY, 21, DayClass.SATURDAY, 4, DayClass.SUNDAY, 4,
            DayClass.HOLIDAY, 1);

    private SampleBuses() {
    }

    static DayBlock day(double factor, double gridKwh, double packC, double... runsKwh) {
        List<DayBlock.Leg> legs = new ArrayList<>();
        for (int run = 0; run < runsKwh.length; run++) {
            EnergyUse use = new EnergyUse(30, 1, factor * runsKwh[run], 0, EnergyCauses.ZERO, gridKwh, 0, 0, 0);
            legs.add(new DayBlock.Leg("Run " + run, DEPARTURES[run], DEPARTURES[run] + 65, true, packC, use, packC, gridKwh));
        }
        return new DayBlock(legs, packC);
    }

    /** A route on so many days of each month but July; its coldest day takes a third more than a normal one. */
    static RouteUse route(int days, double... runsKwh) {
        List<RouteUse.NormalDay> normal = new ArrayList<>();
        List<RouteUse.DesignDay> design = new ArrayList<>();
        EnergyUse year = EnergyUse.ZERO;
        for (int month = 0; month < Climate.MONTHS; month++) {
            if (month != JULY) {
                DayBlock day = day(1, 1, 12, runsKwh);
                EnergyUse use = day.uses().stream().reduce(EnergyUse.ZERO, EnergyUse::plus).times(days);
                year = year.plus(use);
                normal.add(new RouteUse.NormalDay(month, false, days, day, use));
                DayBlock coldest = day(1.33, 3, 6, runsKwh);
                design.add(new RouteUse.DesignDay(month, false, true, coldest, coldest));
                design.add(new RouteUse.DesignDay(month, false, false, day(0.9, 0, 28, runsKwh), day(0.9, 0, 28, runsKwh)));
            }
        }
        return new RouteUse(year, design, normal);
    }

    static YardBus bus(int place, RouteUse route, double routeShare, EnergyUse other) {
        return new YardBus(place, "Bus " + place, 19.2, 60, PACK, 0.9, Optional.of(route), routeShare, other);
    }

    /** A yard that serves on so many days of each month but July. */
    static YardInput yard(List<YardBus> buses, List<PortUnit> ports, ChargeRule rule, boolean midday, Metering metering,
            BuildingLoad building, int days) {
        List<Integer> school = new ArrayList<>(Collections.nCopies(Climate.MONTHS, days));
        school.set(JULY, 0);
        YardCalendar calendar = YardCalendar.of(new ServiceDays(school, Collections.nCopies(Climate.MONTHS, 0)),
                Collections.nCopies(Climate.MONTHS, DAYS),
                buses.stream().flatMap(b -> b.trips().stream()).map(TripDay::in).collect(Collectors.toSet()));
        return new YardInput(buses, ports, rule, midday, 0.15, metering, 1, 1, building, calendar, 15, new SwapTimes(0, 0),
                Double.POSITIVE_INFINITY);
    }

    /** Energy that a year of the buses takes from ports, behind them, kWh. */
    static double usedKwh(YardInput yard) {
        return yard.buses().stream().mapToDouble(bus -> {
            EnergyUse use = bus.route().orElseThrow().year().times(bus.routeShare()).plus(bus.other());
            return use.batteryKwh() + use.gridKwh();
        }).sum();
    }
}
