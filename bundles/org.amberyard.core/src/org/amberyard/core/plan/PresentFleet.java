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
        return new Vehicle(bus.name(), bus.type(), bus.inServiceYear(), bus.odometerKm(),
                bus.record().pack().map(known -> measured(known, place, bus)).orElseGet(() -> soFar(place, bus)), 1, bus.record().used());
    }

    private Vehicle.Pack soFar(int place, BusInput bus) {
        return packs.of(coming(place, bus), bus.measuredPack());
    }

    /** The pack of the record, gone on from the health that was measured where one was. */
    private Vehicle.Pack measured(Vehicle.Pack known, int place, BusInput bus) {
        return bus.measuredPack().map(m -> new Vehicle.Pack(packs.measured(coming(place, bus), known.wear(), m), known.km(),
                known.priceShare())).orElse(known);
    }

    private static PackSoFar.Coming coming(int place, BusInput bus) {
        return new PackSoFar.Coming(0, place, bus.type(), Math.max(0, -bus.inServiceYear()), bus.odometerKm());
    }
}
