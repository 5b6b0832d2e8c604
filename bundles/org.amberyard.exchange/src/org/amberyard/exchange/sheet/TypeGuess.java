package org.amberyard.exchange.sheet;

import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.CombustionType;
import org.amberyard.model.vehicles.VehicleType;

/**
 * The vehicle type of a bus of which only body and fuel are told: the only one of the study that fits, or of several that of the bus
 * of the fleet with the nearest model year.
 */
final class TypeGuess {
    private final Study study;
    private final Map<Bus, VehicleType> typesBefore = new IdentityHashMap<>();

    TypeGuess(Study study) {
        this.study = study;
        study.getBuses().forEach(b -> typesBefore.put(b, b.getType()));
    }

    /** Types of the study with a body and a fuel, as far as they are told. */
    List<VehicleType> fitting(Optional<String> body, Optional<String> fuel) {
        return study.getVehicleTypes().stream()
                .filter(t -> body.map(b -> t.getBodyType().getLiteral().equalsIgnoreCase(b)).orElse(true))
                .filter(t -> fuel.map(f -> fuel(t).equalsIgnoreCase(f)).orElse(true)).toList();
    }

    private static String fuel(VehicleType type) {
        return type instanceof CombustionType engine ? engine.getFuel().getLiteral() : "electric";
    }

    /** That of several types that a bus of the fleet of about the same model year has; empty where none tells. */
    Optional<VehicleType> nearest(List<VehicleType> fitting, int modelYear) {
        if (fitting.size() == 1) {
            return Optional.of(fitting.get(0));
        }
        return modelYear <= 0 ? Optional.empty() : fitting.stream().filter(t -> yearsApart(t, modelYear).isPresent())
                .min(Comparator.comparingInt(t -> yearsApart(t, modelYear).getAsInt()));
    }

    private OptionalInt yearsApart(VehicleType type, int modelYear) {
        return study.getBuses().stream().filter(b -> typesBefore.get(b) == type && b.getModelYear() > 0)
                .mapToInt(b -> Math.abs(b.getModelYear() - modelYear)).min();
    }
}
