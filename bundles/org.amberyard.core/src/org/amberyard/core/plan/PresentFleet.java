package org.amberyard.core.plan;

import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.battery.FadeRate;
import org.amberyard.core.battery.FadeState;
import org.amberyard.core.battery.FullCycleCount;
import org.amberyard.core.battery.PackWear;
import org.amberyard.core.duty.DutyTable;

/**
 * The buses of today. A pack has the cycles that the odometer stands for, less those of packs used up before; its fade is that
 * of its present place through all its years, until a measured state of health says better.
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

    Vehicle bus(int place) {
        BusInput bus = study.buses().get(place);
        PackWear wear = study.types().get(bus.type()).electric().map(e -> wear(place, bus, e.battery())).orElse(PackWear.NEW);
        return new Vehicle(bus.name(), bus.type(), bus.inServiceYear(), bus.odometerKm(),
                new Vehicle.Pack(wear, bus.odometerKm(), 0), 1);
    }

    private PackWear wear(int place, BusInput bus, BatterySpec battery) {
        double age = Math.max(0, -bus.inServiceYear());
        double cycles = FullCycleCount.of(bus.odometerKm() * duty.perKm(bus.type()).dischargedKwh(), battery.nominalKwh())
                % battery.life().cycleLimit();
        if (!(age > 0)) {
            return new PackWear(0, cycles, FadeState.NEW);
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
