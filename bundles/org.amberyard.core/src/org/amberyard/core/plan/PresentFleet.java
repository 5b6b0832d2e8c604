package org.amberyard.core.plan;

import java.util.Optional;
import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.battery.FadeRate;
import org.amberyard.core.battery.FadeState;
import org.amberyard.core.battery.FullCycleCount;
import org.amberyard.core.battery.PackWear;
import org.amberyard.core.duty.DutyTable;

/**
 * The buses of today. A pack has the cycles that the odometer stands for, less those of packs used up before, and that part of
 * the bus's age and distance; its fade is that of its present place through all its years, until a measured state of health
 * says better.
 */
final class PresentFleet {
    private final StudyInput study;
    private final DutyTable duty;
    private final YearOfDriving driving;

    PresentFleet(StudyInput study, DutyTable duty, YearOfDriving driving) {
        this.study = study;
        this.duty = duty;
        this.driving = driving;
    }

    /** The bus of a place; empty where the fleet grows into the place later. */
    Optional<Vehicle> standing(int place) {
        return study.buses().get(place).inServiceYear() > 0 ? Optional.empty() : Optional.of(bus(place));
    }

    Vehicle bus(int place) {
        BusInput bus = study.buses().get(place);
        Vehicle.Pack pack = study.types().get(bus.type()).electric().map(e -> pack(place, bus, e.battery()))
                .orElse(new Vehicle.Pack(PackWear.NEW, bus.odometerKm(), 0));
        return new Vehicle(bus.name(), bus.type(), bus.inServiceYear(), bus.odometerKm(), pack, 1);
    }

    private Vehicle.Pack pack(int place, BusInput bus, BatterySpec battery) {
        double all = FullCycleCount.of(bus.odometerKm() * duty.perKm(bus.type()).dischargedKwh(), battery.nominalKwh());
        double cycles = all % battery.life().cycleLimit();
        double present = all > 0 ? cycles / all : 1;
        return new Vehicle.Pack(wear(place, bus, present * Math.max(0, -bus.inServiceYear()), cycles),
                present * bus.odometerKm(), 0);
    }

    private PackWear wear(int place, BusInput bus, double age, double cycles) {
        if (!(age > 0)) {
            return new PackWear(0, cycles,
                    bus.measuredPack().map(m -> FadeState.NEW.measured(m.health())).orElse(FadeState.NEW));
        }
        FadeRate rate = driving.packYear(0, place, bus.type(), cycles / age).rate();
        return new PackWear(age, cycles, bus.measuredPack().map(m -> goneOn(m, rate, age))
                .orElseGet(() -> FadeState.NEW.after(rate, age)));
    }

    /** From the measured health, as it would stand at the base date. */
    private static FadeState goneOn(MeasuredPack measured, FadeRate rate, double age) {
        double ageThen = Math.max(0, age + measured.year());
        return FadeState.NEW.after(rate, ageThen).measured(measured.health()).after(rate, age - ageThen);
    }
}
