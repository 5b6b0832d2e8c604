package org.amberyard.core.plan;

import java.util.Optional;
import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.battery.FadeRate;
import org.amberyard.core.battery.FadeState;
import org.amberyard.core.battery.FullCycleCount;
import org.amberyard.core.battery.PackWear;
import org.amberyard.core.duty.DutyTable;

/**
 * The pack of a bus that has driven before it comes into the study, be it of the present fleet or bought used. It has the cycles
 * that the odometer stands for, less those of packs used up before, and that part of the bus's age and distance; its fade is that
 * of the bus's place through all its years, until a measured state of health says better.
 */
final class PackSoFar {
    private final StudyInput study;
    private final DutyTable duty;
    private final YearOfDriving driving;

    PackSoFar(StudyInput study, DutyTable duty, YearOfDriving driving) {
        this.study = study;
        this.duty = duty;
        this.driving = driving;
    }

    /**
     * A bus as it comes into the study.
     *
     * @param year year at whose start it comes
     * @param place place that it takes
     * @param type its type
     * @param ageYears age
     * @param odometerKm odometer, km
     */
    record Coming(int year, int place, int type, double ageYears, double odometerKm) {
    }

    /** Its pack; an engine bus has one that never wears. */
    Vehicle.Pack of(Coming bus, Optional<MeasuredPack> measured) {
        return study.types().get(bus.type()).electric().map(e -> of(bus, e.battery(), measured))
                .orElse(new Vehicle.Pack(PackWear.NEW, bus.odometerKm(), 0));
    }

    private Vehicle.Pack of(Coming bus, BatterySpec battery, Optional<MeasuredPack> measured) {
        double drivenKwh = bus.odometerKm() > 0 ? bus.odometerKm() * duty.perKm(bus.type()).dischargedKwh() : 0;
        double all = FullCycleCount.of(drivenKwh, battery.nominalKwh());
        double cycles = all % battery.life().cycleLimit();
        double present = all > 0 ? cycles / all : 1;
        return new Vehicle.Pack(wear(bus, present * bus.ageYears(), cycles, measured), present * bus.odometerKm(), 0);
    }

    private PackWear wear(Coming bus, double age, double cycles, Optional<MeasuredPack> measured) {
        if (!(age > 0)) {
            return new PackWear(0, cycles, measured.map(m -> FadeState.NEW.measured(m.health())).orElse(FadeState.NEW));
        }
        FadeRate rate = driving.packYear(bus.year(), bus.place(), bus.type(), cycles / age).rate();
        return new PackWear(age, cycles, measured.map(m -> goneOn(m, rate, age, bus.year()))
                .orElseGet(() -> FadeState.NEW.after(rate, age)));
    }

    /** From the measured health, as it would stand when the bus comes. */
    private static FadeState goneOn(MeasuredPack measured, FadeRate rate, double age, int year) {
        double ageThen = Math.max(0, age - (year - measured.year()));
        return FadeState.NEW.after(rate, ageThen).measured(measured.health()).after(rate, age - ageThen);
    }
}
