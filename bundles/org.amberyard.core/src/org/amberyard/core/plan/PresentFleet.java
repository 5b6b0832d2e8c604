package org.amberyard.core.plan;

import java.util.Optional;

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
        double age = Math.max(0, -bus.inServiceYear());
        return new Vehicle(bus.name(), bus.type(), bus.inServiceYear(), bus.odometerKm(),
                packs.of(new PackSoFar.Coming(0, place, bus.type(), age, bus.odometerKm()), bus.measuredPack()), 1);
    }
}
