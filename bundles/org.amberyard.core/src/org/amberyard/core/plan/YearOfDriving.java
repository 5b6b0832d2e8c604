package org.amberyard.core.plan;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.battery.FullCycleCount;
import org.amberyard.core.battery.PackReplacement;
import org.amberyard.core.battery.PackWear;
import org.amberyard.core.duty.BlockCheck;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.duty.ElectricSpec;
import org.amberyard.core.duty.EngineSpec;
import org.amberyard.core.duty.EnergyUse;
import org.amberyard.core.duty.PackYears;
import org.amberyard.core.duty.RouteUse;

/**
 * One year of driving of one bus: distance, energy, battery wear, and whether its pack is due at the end.
 */
final class YearOfDriving {
    private final StudyInput study;
    private final DutyTable duty;
    private final PortFleet ports;

    YearOfDriving(StudyInput study, DutyTable duty, PortFleet ports) {
        this.study = study;
        this.duty = duty;
        this.ports = ports;
    }

    /**
     * Outcome.
     *
     * @param record the year for the results
     * @param after the bus at the end of the year, its pack not replaced
     * @param packDue why its pack is due, if it is
     */
    record Driven(VehicleYear record, Vehicle after, Optional<PackReplacement.Cause> packDue) {
    }

    Driven of(int year, int place, Vehicle vehicle) {
        BusInput bus = study.buses().get(place);
        EnergyUse driven = distanceUse(bus, vehicle.type());
        return study.types().get(vehicle.type()).spec() instanceof ElectricSpec electric
                ? electricYear(year, place, vehicle, driven, electric.battery())
                : engineYear(year, place, vehicle, driven, (EngineSpec) study.types().get(vehicle.type()).spec(), bus);
    }

    private EnergyUse distanceUse(BusInput bus, int type) {
        EnergyUse other = otherUse(duty, bus, type);
        if (bus.route().isEmpty()) {
            return other;
        }
        EnergyUse onRoute = duty.use(bus.route().getAsInt(), type).map(RouteUse::year).orElse(EnergyUse.ZERO);
        return onRoute.times(1 - study.rules().spareCoverShare()).plus(other);
    }

    /** What the distance of a bus beyond its route takes in a year, at the mean of the routes. */
    static EnergyUse otherUse(DutyTable duty, BusInput bus, int type) {
        return bus.otherKmPerYear() > 0 ? duty.perKm(type).times(bus.otherKmPerYear()) : EnergyUse.ZERO;
    }

    private static Driven engineYear(int year, int place, Vehicle vehicle, EnergyUse driven, EngineSpec engine,
            BusInput bus) {
        EnergyUse modelled = driven.plus(EnergyUse.ofFuel(engine.fuelL(0, bus.idleHoursPerYear())));
        EnergyUse use = modelled.plus(EnergyUse.ofFuel((vehicle.fuelFactor() - 1) * modelled.fuelL()));
        VehicleYear record = new VehicleYear(year, place, vehicle, use, 0, 0, 0, 1);
        return new Driven(record, vehicle.driven(use.km(), PackWear.NEW), Optional.empty());
    }

    private Driven electricYear(int year, int place, Vehicle vehicle, EnergyUse use, BatterySpec battery) {
        double cycles = FullCycleCount.of(use.dischargedKwh(), battery.nominalKwh());
        PackWear wear = vehicle.pack().wear().after(packYear(year, place, vehicle.type(), cycles).rate(), cycles, 1);
        VehicleYear record = new VehicleYear(year, place, vehicle, use, 0, cycles, wear.fullCycles(), wear.health());
        return new Driven(record, vehicle.driven(use.km(), wear),
                PackReplacement.due(battery, wear, leastHealth(year, place, vehicle.type())));
    }

    /** What a year in a place does to a pack, with full cycles that may come from other driving too. */
    PackYears.PackYear packYear(int year, int place, int type, double cycles) {
        BatterySpec battery = study.types().get(type).electric().orElseThrow().battery();
        return routeUse(place, type).map(use -> duty.packYears().of(use, battery, check(year, type)).withFullCycles(cycles))
                .orElseGet(() -> duty.packYears().parked(battery, cycles));
    }

    /** Health below which a bus in a place cannot do its route any more. */
    double leastHealth(int year, int place, int type) {
        BatterySpec battery = study.types().get(type).electric().orElseThrow().battery();
        return routeUse(place, type).map(use -> duty.packYears().leastHealth(use, battery, check(year, type))).orElse(0.0);
    }

    private Optional<RouteUse> routeUse(int place, int type) {
        OptionalInt route = study.buses().get(place).route();
        return route.isPresent() ? duty.use(route.getAsInt(), type).filter(u -> u.year().km() > 0) : Optional.empty();
    }

    private BlockCheck check(int year, int type) {
        return RouteFitting.check(study, ports.batteryKw(study.types().get(type), year), study.middayCharging());
    }

    /** Measured over modelled fuel of a bus of today in its place; 1 where nothing was measured, or it does not drive. */
    double fuelFactor(int place, Vehicle vehicle) {
        OptionalDouble measured = study.buses().get(place).measuredKmPerL();
        EnergyUse modelled = of(0, place, vehicle).record().use();
        return measured.isPresent() && modelled.km() > 0 && modelled.fuelL() > 0 ? modelled.km() / measured.getAsDouble() / modelled.fuelL() : 1;
    }
}
