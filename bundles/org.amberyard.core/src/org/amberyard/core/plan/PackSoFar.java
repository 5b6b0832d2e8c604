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
        FadeRate rate = rate(bus, age, cycles);
        return new PackWear(age, cycles, measured.map(m -> {
            double since = since(bus, age, m);
            return goneOn(FadeState.NEW.after(rate, age - since), m, rate, since);
        }).orElseGet(() -> FadeState.NEW.after(rate, age)));
    }

    /** A pack that is known, with its losses in their proportion, gone on from a measured health to the year in which the bus comes. */
    PackWear measured(Coming bus, PackWear known, MeasuredPack measured) {
        double age = known.years();
        double since = since(bus, age, measured);
        FadeState fade = since > 0 ? goneOn(known.fade(), measured, rate(bus, age, known.fullCycles()), since)
                : known.fade().measured(measured.health());
        return new PackWear(age, known.fullCycles(), fade);
    }

    private FadeRate rate(Coming bus, double age, double cycles) {
        return driving.packYear(bus.year(), bus.place(), bus.type(), cycles / age).rate();
    }

    /** Years of a pack's age since a measurement. */
    private static double since(Coming bus, double age, MeasuredPack measured) {
        return Math.min(age, bus.year() - measured.year());
    }

    /** From the measured health, as it would stand when the bus comes. */
    private static FadeState goneOn(FadeState proportion, MeasuredPack measured, FadeRate rate, double since) {
        return proportion.measured(measured.health()).after(rate, since);
    }
}
