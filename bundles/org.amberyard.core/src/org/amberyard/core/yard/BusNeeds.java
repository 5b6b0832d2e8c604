package org.amberyard.core.yard;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.battery.TaperCurve;
import org.amberyard.core.charging.PortUnit;
import org.amberyard.core.depot.ChargeWindow;
import org.amberyard.core.depot.Port;
import org.amberyard.core.duty.BlockCheck;
import org.amberyard.core.duty.DayBlock;
import org.amberyard.core.duty.EnergyUse;
import org.amberyard.core.duty.LayoverCharge;
import org.amberyard.core.duty.LeastLayoverCharge;
import org.amberyard.core.duty.RouteUse;
import org.amberyard.core.math.CompensatedSum;

/**
 * What a bus needs from the ports on the stretches of a month. The energy of the month is that of its normal days as often
 * as the bus drives them; the coldest and the hottest day take their part of it and the other days share the rest, so
 * nothing is charged that is not used. Of the driving beside the route, the trips of the month's busiest day of trips are
 * driven on that day, from which the bus comes home late; all else falls evenly on the service days of the year and
 * is charged in the night. So do trips of a month with too few service days for a day of trips of its own.
 */
final class BusNeeds {
    /** When a bus without a route comes and leaves; common practice, no source. */
    private static final double PARKED_FROM_MIN = 18 * 60.0;
    private static final double PARKED_TO_MIN = 30 * 60.0;
    /** Keeps the arithmetic finite for a bus that comes when it should leave again; it leaves short of charge. */
    private static final double LEAST_STAY_MIN = 1;
    private static final ChargeWindow ALL_DAY = new ChargeWindow(0, 0);

    private final YardBus bus;
    private final YardInput yard;
    private final double batteryKw;
    private final EnergyUse otherOfDay;
    /** Energy of a day beside the route but for the trips of busy days, kWh. */
    private final double evenKwh;
    private volatile Shares last;
    private volatile Layovers lastDay;

    /**
     * What a bus takes in between the runs of a day.
     *
     * @param day the day
     * @param taken what it takes
     * @param least what it must take to come home
     */
    private record Layovers(DayBlock day, List<LayoverCharge> taken, List<LayoverCharge> least) {

        /** Least energy in a stand at the yard, kWh. */
        double leastKwh(LayoverCharge layover) {
            return CompensatedSum.of(least, l -> l.fromMin() == layover.fromMin() ? l.batteryKwh() : 0);
        }
    }

    /** What counts of the energy of days of a month from the battery, and from the grid for heat. */
    private record Shares(ServiceMonth month, MonthShare battery, MonthShare grid) {
    }

    BusNeeds(YardBus bus, YardInput yard) {
        this.bus = bus;
        this.yard = yard;
        this.batteryKw = Port.countedKw(yard.ports().stream().map(PortUnit::port).toList(), bus.acKw(), bus.dcKw());
        double serviceDays = yard.calendar().serviceDays();
        this.otherOfDay = bus.other().times(1 / serviceDays);
        this.evenKwh = Math.max(0, otherOfDay.batteryKwh() - bus.tripsKwh(yard.calendar()) / serviceDays);
    }

    /** Need on one stretch of a month of service. */
    BusNeed on(ServiceMonth month, StretchKind kind) {
        double freeMin = (kind.days().size() - 1) * DayBlock.DAY_MIN;
        Optional<TripDay> trip = kind == StretchKind.TRIP_DAY ? bus.trip(month) : Optional.empty();
        Optional<RouteUse.NormalDay> normal = bus.route().flatMap(r -> r.normalDay(month.month(), month.extendedYear()));
        if (normal.isEmpty()) {
            return parked(trip, freeMin);
        }
        Shares shares = shares(month, normal.get());
        DayBlock day = kind.extreme() ? MonthShare.extreme(bus, month, kind).block(yard.midday()) : normal.get().block();
        return driven(day, trip, shares.battery.of(kind), shares.grid.of(kind), freeMin);
    }

    /** Shares of a month, which is asked for stretch by stretch. */
    private Shares shares(ServiceMonth month, RouteUse.NormalDay normal) {
        Shares known = last;
        if (known == null || !known.month.equals(month)) {
            known = new Shares(month, MonthShare.of(bus, month, normal, yard.midday(), EnergyUse::batteryKwh),
                    MonthShare.of(bus, month, normal, yard.midday(), EnergyUse::gridKwh));
            last = known;
        }
        return known;
    }

    private BusNeed parked(Optional<TripDay> trip, double freeMin) {
        double fromMin = arrivalMin(PARKED_FROM_MIN, trip);
        double toMin = Math.max(PARKED_TO_MIN, fromMin + LEAST_STAY_MIN) + freeMin;
        YardHeat heat = YardHeat.even(fromMin, toMin, otherOfDay.gridKwh());
        return need(List.of(), fromMin, toMin, besideRouteKwh(trip), BatterySpec.MILD_C, heat);
    }

    private BusNeed driven(DayBlock day, Optional<TripDay> trip, double energyFactor, double heatFactor, double freeMin) {
        Layovers between = layovers(day);
        List<LayoverCharge> layovers = trip.isEmpty() ? between.taken
                : between.taken.stream().filter(l -> !trip.get().awayBetween(l.fromMin(), l.toMin())).toList();
        double middayKwh = CompensatedSum.of(layovers, LayoverCharge::batteryKwh);
        double lastMin = arrivalMin(day.legs().get(day.legs().size() - 1).arrivalMin(), trip);
        double nextMin = Math.max(day.nextMorningMin(), lastMin + LEAST_STAY_MIN) + freeMin;
        double nightKwh = Math.max(0, energyFactor * (day.batteryKwh() - middayKwh)) + besideRouteKwh(trip);
        YardHeat heat = YardHeat.of(day, heatFactor, lastMin, nextMin, otherOfDay.gridKwh(), batteryKw);
        List<BusNeed.Stay> byDay = new ArrayList<>(layovers.size() + 1);
        for (LayoverCharge layover : layovers) {
            byDay.add(stay(between, layover, energyFactor, layovers, plugged(heat)));
        }
        return need(byDay, lastMin, nextMin, nightKwh, day.nightPackC(), heat);
    }

    /**
     * With the night. A bus that shares plugs with others cannot count on standing at one when heat is due, and
     * beside the charge that must go on until the departure the port has no power for heat: it is then taken from the battery, which is
     * charged for it, as is what the port has no power for anyway.
     */
    private BusNeed need(List<BusNeed.Stay> byDay, double fromMin, double toMin, double nightKwh, double packC,
            YardHeat heat) {
        YardHeat plugged = plugged(heat);
        List<BusNeed.Stay> stays = new ArrayList<>(byDay);
        stays.addAll(night(fromMin, toMin, nightKwh + heat.lackingKwh() + heat.kwh() - plugged.kwh(), packC, plugged));
        YardHeat apart = plugged.apartFrom(stays);
        stays.replaceAll(s -> s.taking(plugged.besideKwh(s)));
        return new BusNeed(stays, apart.all());
    }

    private YardHeat plugged(YardHeat heat) {
        return yard.ownPlugs() ? heat : YardHeat.NONE;
    }

    private static double arrivalMin(double usualMin, Optional<TripDay> trip) {
        return trip.map(t -> Math.max(usualMin, t.returnMin())).orElse(usualMin);
    }

    /** Energy of a day beside the route: its even part, and the trip of the day. */
    private double besideRouteKwh(Optional<TripDay> trip) {
        return evenKwh + trip.map(TripDay::batteryKwh).orElse(0.0);
    }

    /** What is taken in between the runs of a day, which is asked for stretch by stretch. */
    private Layovers layovers(DayBlock day) {
        Layovers known = lastDay;
        if (known == null || known.day != day) {
            known = yard.midday() ? charged(day) : new Layovers(day, List.of(), List.of());
            lastDay = known;
        }
        return known;
    }

    private Layovers charged(DayBlock day) {
        List<LayoverCharge> least = leastLayovers(day);
        return new Layovers(day, yard.rule().managed() ? least
                : new BlockCheck(batteryKw, ALL_DAY, true, yard.reserveShare()).layovers(day, bus.battery(), bus.health()), least);
    }

    private List<LayoverCharge> leastLayovers(DayBlock day) {
        return new LeastLayoverCharge(day, bus.battery(), bus.health(), yard.reserveShare()).at(batteryKw);
    }

    private BusNeed.Stay stay(Layovers between, LayoverCharge layover, double factor, List<LayoverCharge> all,
            YardHeat heat) {
        List<DayBlock.Leg> before = between.day.legs().stream().filter(l -> l.arrivalMin() <= layover.fromMin()).toList();
        double drawnKwh = CompensatedSum.of(before, l -> l.use().batteryKwh());
        double chargedKwh = CompensatedSum.of(all, l -> l.fromMin() <= layover.fromMin() ? l.batteryKwh() : 0);
        double endShare = Math.min(1, 1 - (drawnKwh - chargedKwh) / bus.battery().usableKwh(bus.health()));
        double packC = before.get(before.size() - 1).packC();
        double kwh = factor * layover.batteryKwh();
        double byMin = yard.rule().managed() ? chargedByMin(layover.fromMin(), layover.toMin(), kwh, endShare, packC,
                heat)
                : Math.max(layover.fromMin() + LEAST_STAY_MIN, heat.beginsMin(layover.toMin()));
        return new BusNeed.Stay(layover.fromMin(), layover.toMin(), Math.min(byMin, layover.toMin()), kwh,
                factor * between.leastKwh(layover), endShare, packC, heat.standingKw(layover.fromMin(), layover.toMin()));
    }

    private List<BusNeed.Stay> night(double fromMin, double toMin, double batteryKwh, double packC, YardHeat heat) {
        double byMin = chargedByMin(fromMin, toMin, batteryKwh, 1, packC, heat);
        return batteryKwh <= 0 ? List.of()
                : List.of(new BusNeed.Stay(fromMin, toMin, byMin, batteryKwh, batteryKwh, 1, packC, heat.standingKw(fromMin, toMin)));
    }

    /** The port heats the bus in the time before departure; it is charged before that where there is time for it. */
    private double chargedByMin(double fromMin, double toMin, double batteryKwh, double endShare, double packC, YardHeat heat) {
        double kw = batteryKw - heat.standingKw(fromMin, toMin);
        double byMin = heat.beginsMin(toMin);
        if (byMin >= toMin || kw <= 0) {
            return toMin;
        }
        TaperCurve curve = TaperCurve.of(bus.battery(), bus.health(), packC);
        double hours = curve.hours(Math.max(0, endShare - batteryKwh / curve.usableKwh()), endShare, kw);
        return byMin > fromMin && hours * 60 <= yard.rule().minutes(fromMin, byMin) ? byMin : toMin;
    }
}
