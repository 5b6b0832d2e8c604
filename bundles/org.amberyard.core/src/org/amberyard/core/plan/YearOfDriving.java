package org.amberyard.core.plan;

import java.util.Optional;
import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.battery.FullCycleCount;
import org.amberyard.core.battery.PackReplacement;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.duty.ElectricSpec;
import org.amberyard.core.duty.EngineSpec;
import org.amberyard.core.duty.EnergyUse;
import org.amberyard.core.duty.RouteUse;

/**
 * One year of driving of one bus: distance, energy, battery wear and, in the year in which a limit is reached, the
 * replacement of the pack.
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
     * @param after the bus at the end of the year
     * @param packReplaced the replacement of its pack, if one fell due
     */
    record Driven(VehicleYear record, Vehicle after, Optional<FleetEvent> packReplaced) {
    }

    Driven of(int year, int place, Vehicle vehicle) {
        BusInput bus = study.buses().get(place);
        EnergyUse driven = distanceUse(bus, vehicle.type());
        return study.types().get(vehicle.type()).spec() instanceof ElectricSpec electric
                ? electricYear(year, place, vehicle, driven, electric.battery())
                : engineYear(year, place, vehicle, driven, (EngineSpec) study.types().get(vehicle.type()).spec(), bus);
    }

    private EnergyUse distanceUse(BusInput bus, int type) {
        EnergyUse other = duty.perKm(type).times(bus.otherKmPerYear());
        if (bus.route().isEmpty()) {
            return other;
        }
        EnergyUse onRoute = duty.use(bus.route().getAsInt(), type).map(RouteUse::year).orElse(EnergyUse.ZERO);
        return onRoute.times(1 - study.rules().spareCoverShare()).plus(other);
    }

    private static Driven engineYear(int year, int place, Vehicle vehicle, EnergyUse driven, EngineSpec engine,
            BusInput bus) {
        double idleL = engine.fuelL(0, bus.idleHoursPerYear());
        EnergyUse use = driven.plus(new EnergyUse(0, 0, 0, 0, 0, 0, 0, 0, idleL, 0));
        VehicleYear record = new VehicleYear(year, place, vehicle, use, 0, 0, 0, 1);
        Vehicle after = vehicle.drivenWith(use.km(), new Vehicle.Pack(vehicle.packYears() + 1, 0, 0));
        return new Driven(record, after, Optional.empty());
    }

    private Driven electricYear(int year, int place, Vehicle vehicle, EnergyUse use, BatterySpec battery) {
        double cycles = FullCycleCount.of(use.batteryKwh(), battery.nominalKwh());
        Vehicle.Pack worn = new Vehicle.Pack(vehicle.packYears() + 1, vehicle.packCycles() + cycles, vehicle.packPaid());
        Optional<PackReplacement.Cause> cause = PackReplacement.due(battery, worn.years(), worn.cycles());
        Vehicle.Pack pack = cause.map(c -> replacement(year, worn, battery, c)).orElse(worn);
        Optional<FleetEvent> event = cause.map(c -> new FleetEvent.PackReplaced(year, place, vehicle, c, pack.paid()));
        double meterKwh = use.batteryKwh() / ports.efficiency(year);
        double health = battery.fade().health(pack.years(), pack.cycles());
        VehicleYear record = new VehicleYear(year, place, vehicle, use, meterKwh, cycles, pack.cycles(), health);
        return new Driven(record, vehicle.drivenWith(use.km(), pack), event);
    }

    /** A new pack; cycles beyond the limit within the year are already on it, so that no cycle is lost. */
    private Vehicle.Pack replacement(int year, Vehicle.Pack worn, BatterySpec battery, PackReplacement.Cause cause) {
        double paid = battery.nominalKwh() * study.prices().pack().at(year, year);
        double carried = cause == PackReplacement.Cause.CYCLE_LIMIT ? worn.cycles() - battery.cycleLimit() : 0;
        return new Vehicle.Pack(0, carried, paid);
    }
}
