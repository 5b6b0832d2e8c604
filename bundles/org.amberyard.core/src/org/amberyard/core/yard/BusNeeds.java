package org.amberyard.core.yard;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.depot.ChargeWindow;
import org.amberyard.core.duty.BlockCheck;
import org.amberyard.core.duty.DayBlock;
import org.amberyard.core.duty.EnergyUse;
import org.amberyard.core.duty.LayoverCharge;
import org.amberyard.core.duty.LeastLayoverCharge;
import org.amberyard.core.duty.RouteUse;

/**
 * What a bus needs from the ports on the stretches of a month. The energy of the month is that of its normal days as often
 * as the bus drives them; the coldest and the hottest day take their part of it and the other days share the rest, so
 * nothing is charged that is not used. Trips and other driving without a route fall evenly on the service days of the
 * year and are charged in the night.
 */
final class BusNeeds {
    /** When a bus without a route comes and leaves; common practice, no source. */
    private static final double PARKED_FROM_MIN = 18 * 60.0;
    private static final double PARKED_TO_MIN = 30 * 60.0;
    /** Time before departure in which a bus is heated, as in the duty. */
    private static final double PREHEAT_MIN = 30;
    private static final ChargeWindow ALL_DAY = new ChargeWindow(0, 0);

    private final YardBus bus;
    private final YardInput yard;
    private final double batteryKw;
    private final EnergyUse otherOfDay;

    BusNeeds(YardBus bus, YardInput yard) {
        this.bus = bus;
        this.yard = yard;
        this.batteryKw = yard.ports().stream().mapToDouble(u -> u.port().batteryKw(u.port().direct() ? bus.dcKw() : bus.acKw()))
                .max().orElse(0);
        this.otherOfDay = bus.other().times(1 / yard.calendar().serviceDays());
    }

    /** Need on one stretch of a month of service. */
    BusNeed on(ServiceMonth month, StretchKind kind) {
        double freeMin = (kind.days().size() - 1) * DayBlock.DAY_MIN;
        Optional<RouteUse.NormalDay> normal = bus.route().flatMap(r -> r.normalDay(month.month(), month.extendedYear()));
        if (normal.isEmpty()) {
            double toMin = PARKED_TO_MIN + freeMin;
            return new BusNeed(night(PARKED_FROM_MIN, toMin, 0, BatterySpec.MILD_C),
                    evenHeat(PARKED_FROM_MIN, toMin, otherOfDay.gridKwh()));
        }
        MonthShare energy = MonthShare.of(bus, month, normal.get(), yard.midday(), EnergyUse::batteryKwh);
        MonthShare grid = MonthShare.of(bus, month, normal.get(), yard.midday(), EnergyUse::gridKwh);
        DayBlock day = kind.extreme() ? MonthShare.extreme(bus, month, kind).block(yard.midday()) : normal.get().block();
        return driven(day, energy.of(kind), grid.of(kind), freeMin);
    }

    private BusNeed driven(DayBlock day, double energyFactor, double heatFactor, double freeMin) {
        List<LayoverCharge> layovers = layovers(day);
        double middayKwh = layovers.stream().mapToDouble(LayoverCharge::batteryKwh).sum();
        DayBlock.Leg last = day.legs().get(day.legs().size() - 1);
        double nextMin = Math.max(day.nextMorningMin(), last.arrivalMin()) + freeMin;
        List<BusNeed.Stay> stays = new ArrayList<>();
        layovers.forEach(l -> stays.add(stay(day, l, energyFactor, layovers)));
        stays.addAll(night(last.arrivalMin(), nextMin, energyFactor * (day.batteryKwh() - middayKwh), day.nightPackC()));
        return new BusNeed(stays, heat(day, heatFactor, last.arrivalMin(), nextMin));
    }

    private List<LayoverCharge> layovers(DayBlock day) {
        if (!yard.midday()) {
            return List.of();
        }
        return yard.rule().managed()
                ? new LeastLayoverCharge(day, bus.battery(), bus.health(), yard.reserveShare()).at(batteryKw)
                : new BlockCheck(batteryKw, ALL_DAY, true, yard.reserveShare()).layovers(day, bus.battery(), bus.health());
    }

    private BusNeed.Stay stay(DayBlock day, LayoverCharge layover, double factor, List<LayoverCharge> all) {
        List<DayBlock.Leg> before = day.legs().stream().filter(l -> l.arrivalMin() <= layover.fromMin()).toList();
        double drawnKwh = before.stream().mapToDouble(l -> l.use().batteryKwh()).sum();
        double chargedKwh = all.stream().filter(l -> l.fromMin() <= layover.fromMin())
                .mapToDouble(LayoverCharge::batteryKwh).sum();
        // A layover that fills the pack may end above full by rounding.
        double endShare = Math.min(1, 1 - (drawnKwh - chargedKwh) / bus.battery().usableKwh(bus.health()));
        return new BusNeed.Stay(layover.fromMin(), layover.toMin(), factor * layover.batteryKwh(), endShare,
                before.get(before.size() - 1).packC());
    }

    private List<BusNeed.Stay> night(double fromMin, double toMin, double routeKwh, double packC) {
        double batteryKwh = Math.max(0, routeKwh) + otherOfDay.batteryKwh();
        return batteryKwh > 0 ? List.of(new BusNeed.Stay(fromMin, toMin, batteryKwh, 1, packC)) : List.of();
    }

    private List<BusNeed.Heat> heat(DayBlock day, double factor, double lastMin, double nextMin) {
        List<BusNeed.Heat> heat = new ArrayList<>();
        double nightKwh = 0;
        for (int place = 0; place < day.legs().size(); place++) {
            DayBlock.Leg leg = day.legs().get(place);
            double gridKwh = factor * leg.use().gridKwh();
            double beforeKwh = place == 0 ? Math.min(gridKwh, leg.preheatKw() * PREHEAT_MIN / 60) : gridKwh;
            double departureMin = place == 0 ? nextMin : leg.departureMin();
            heat.addAll(evenHeat(departureMin - PREHEAT_MIN, departureMin, beforeKwh));
            nightKwh += gridKwh - beforeKwh;
        }
        heat.addAll(evenHeat(lastMin, nextMin, nightKwh + otherOfDay.gridKwh()));
        return heat;
    }

    private static List<BusNeed.Heat> evenHeat(double fromMin, double toMin, double kwh) {
        return kwh > 0 && toMin > fromMin ? List.of(new BusNeed.Heat(fromMin, toMin, kwh / ((toMin - fromMin) / 60)))
                : List.of();
    }
}
