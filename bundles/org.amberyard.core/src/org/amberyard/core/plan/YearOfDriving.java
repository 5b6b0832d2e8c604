package org.amberyard.core.plan;

import java.util.Optional;
import java.util.OptionalDouble;
import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.battery.FullCycleCount;
import org.amberyard.core.battery.PackReplacement;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.duty.ElectricSpec;
import org.amberyard.core.duty.EngineSpec;
import org.amberyard.core.duty.EnergyUse;
import org.amberyard.core.duty.RouteUse;
import org.amberyard.core.money.CostCategory;

/**
 * One year of driving of one bus: distance, energy, battery wear and, in the year in which a limit is reached, the
 * replacement of the pack. A bus that leaves its place when the year is over gets no new pack, nor does any in the last year
 * of the study.
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
        EnergyUse other = duty.perKm(type).times(bus.otherKmPerYear());
        if (bus.route().isEmpty()) {
            return other;
        }
        EnergyUse onRoute = duty.use(bus.route().getAsInt(), type).map(RouteUse::year).orElse(EnergyUse.ZERO);
        return onRoute.times(1 - study.rules().spareCoverShare()).plus(other);
    }

    private static Driven engineYear(int year, int place, Vehicle vehicle, EnergyUse driven, EngineSpec engine,
            BusInput bus) {
        EnergyUse modelled = driven.plus(EnergyUse.ofFuel(engine.fuelL(0, bus.idleHoursPerYear())));
        EnergyUse use = modelled.plus(EnergyUse.ofFuel((vehicle.fuelFactor() - 1) * modelled.fuelL()));
        VehicleYear record = new VehicleYear(year, place, vehicle, use, 0, 0, 0, 1);
        Vehicle after = vehicle.drivenWith(use.km(), new Vehicle.Pack(vehicle.packYears() + 1, 0, 0));
        return new Driven(record, after, Optional.empty());
    }

    private Driven electricYear(int year, int place, Vehicle vehicle, EnergyUse use, BatterySpec battery) {
        double cycles = FullCycleCount.of(use.dischargedKwh(), battery.nominalKwh());
        Vehicle.Pack pack = new Vehicle.Pack(vehicle.packYears() + 1, vehicle.packCycles() + cycles, vehicle.packPaid());
        double meterKwh = (use.batteryKwh() + use.gridKwh()) / ports.efficiency(year);
        double health = battery.fade().health(pack.years(), pack.cycles());
        VehicleYear record = new VehicleYear(year, place, vehicle, use, meterKwh, cycles, pack.cycles(), health);
        return new Driven(record, vehicle.drivenWith(use.km(), pack),
                PackReplacement.due(battery, pack.years(), pack.cycles()));
    }

    /** Measured over modelled fuel of a bus of today in its place; 1 where nothing was measured or nothing is burnt. */
    double fuelFactor(int place, Vehicle vehicle) {
        OptionalDouble measured = study.buses().get(place).measuredKmPerL();
        EnergyUse modelled = of(0, place, vehicle).record().use();
        return measured.isPresent() && modelled.fuelL() > 0 ? modelled.km() / measured.getAsDouble() / modelled.fuelL() : 1;
    }

    /** The bus with a new pack; cycles beyond the limit are already on it, so that no cycle is lost. */
    Vehicle withNewPack(Vehicle worn, PackReplacement.Cause cause, double paid) {
        BatterySpec battery = study.types().get(worn.type()).electric().orElseThrow().battery();
        double carried = cause == PackReplacement.Cause.CYCLE_LIMIT ? worn.packCycles() - battery.cycleLimit() : 0;
        return worn.drivenWith(0, new Vehicle.Pack(0, carried, paid));
    }

    /** Price of a new pack in the course of a year, constant money. */
    double packPrice(Vehicle vehicle, int year) {
        BatterySpec battery = study.types().get(vehicle.type()).electric().orElseThrow().battery();
        double time = study.money().time(CostCategory.BATTERY_REPLACEMENT, year);
        return battery.nominalKwh() * study.prices().pack().at(year, time);
    }
}
