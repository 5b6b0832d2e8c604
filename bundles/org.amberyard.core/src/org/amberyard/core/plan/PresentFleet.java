package org.amberyard.core.plan;

import java.util.Optional;
import org.amberyard.core.battery.PackWear;

/** The buses of today. */
final class PresentFleet {
    private final StudyInput study;
    private final PackSoFar packs;

    PresentFleet(StudyInput study, PackSoFar packs) {
        this.study = study;
        this.packs = packs;
    }

    /** The bus of a place; empty where the fleet grows into the place later. */
    Optional<Vehicle> standing(int place) {
        return study.buses().get(place).inServiceYear() > 0 ? Optional.empty() : Optional.of(bus(place));
    }

    Vehicle bus(int place) {
        BusInput bus = study.buses().get(place);
        return new Vehicle(bus.name(), bus.type(), bus.inServiceYear(), bus.odometerKm(),
                bus.record().pack().map(known -> measured(known, bus)).orElseGet(() -> soFar(place, bus)), 1, bus.record().used());
    }

    private Vehicle.Pack soFar(int place, BusInput bus) {
        double age = Math.max(0, -bus.inServiceYear());
        return packs.of(new PackSoFar.Coming(0, place, bus.type(), age, bus.odometerKm()), bus.measuredPack());
    }

    /** The pack of the record, at the health that was measured where one was. */
    private static Vehicle.Pack measured(Vehicle.Pack known, BusInput bus) {
        PackWear wear = known.wear();
        return bus.measuredPack().map(m -> new Vehicle.Pack(new PackWear(wear.years(), wear.fullCycles(),
                wear.fade().measured(m.health())), known.km(), known.priceShare())).orElse(known);
    }
}
