package org.amberyard.exchange.sheet;

import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.amberyard.model.common.BodyType;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.CombustionType;
import org.amberyard.model.vehicles.Fuel;
import org.amberyard.model.vehicles.VehicleType;
import org.amberyard.study.begin.AssumedTypes;

/**
 * The vehicle type of a bus of which only body and fuel are told: the only one of the study that fits, or of several that of the bus
 * of the fleet with the nearest model year.
 */
final class TypeGuess {
    private static final Pattern LETTER = Pattern.compile("(?i)(?:type\\s*)?([a-d])");

    private static final String ELECTRIC = "electric";
    /** What fuels are called beside their names. */
    private static final Map<String, String> ALSO = Map.of("gas", "gasoline", "unleaded", "gasoline", "petrol", "gasoline", "lpg", "propane",
            "ulsd", "diesel", "bev", ELECTRIC, "ev", ELECTRIC, "battery", ELECTRIC);

    private final Study study;
    private final ElementIndex<VehicleType> byName;
    private final Map<Bus, VehicleType> typesBefore = new IdentityHashMap<>();

    TypeGuess(Study study) {
        this.study = study;
        this.byName = new ElementIndex<>(study.getVehicleTypes());
        study.getBuses().forEach(b -> typesBefore.put(b, b.getType()));
    }

    /** True for a body type, alone or behind the word. */
    static boolean isBody(String text) {
        return LETTER.matcher(text.strip()).matches();
    }

    private static String letter(String body) {
        Matcher letter = LETTER.matcher(body.strip());
        return letter.matches() ? letter.group(1) : body;
    }

    /** Body types for a message. */
    static String bodies() {
        return BodyType.VALUES.stream().map(BodyType::getLiteral).collect(Collectors.joining(", "));
    }

    /** The type of the study that a text names. */
    Optional<VehicleType> named(String text) {
        return byName.find(text);
    }

    /** Names of the types for a message. */
    String names() {
        return byName.names();
    }

    /** Types of the study with a body and a fuel, as far as they are told. */
    List<VehicleType> fitting(Optional<String> body, Optional<String> fuel) {
        return study.getVehicleTypes().stream()
                .filter(t -> body.map(b -> t.getBodyType().getLiteral().equalsIgnoreCase(letter(b))).orElse(true))
                .filter(t -> fuel.map(f -> burns(t, f)).orElse(true)).toList();
    }

    /** True when a fuel is that of a type. */
    static boolean burns(VehicleType type, String fuel) {
        return fuel(type).equals(fuelWord(fuel));
    }

    /** A fuel as the model calls it, whatever lists call it. */
    private static String fuelWord(String fuel) {
        String word = fuel.strip().toLowerCase(Locale.ROOT);
        return ALSO.getOrDefault(word, word);
    }

    /** True for what buses run on, whether or not the study has such. */
    static boolean isFuel(String fuel) {
        return fuelWord(fuel).equals(ELECTRIC) || Fuel.getByName(fuelWord(fuel).toUpperCase(Locale.ROOT)) != null;
    }

    /** A type of a body and a fuel with figures that are assumed; empty where one of them is not told. */
    static Optional<VehicleType> assumed(Optional<String> body, Optional<String> fuel) {
        if (body.isEmpty() || fuel.isEmpty() || !isFuel(fuel.get())) {
            return Optional.empty();
        }
        BodyType type = BodyType.get(letter(body.get()).toUpperCase(Locale.ROOT));
        String word = fuelWord(fuel.get());
        return Optional.of(word.equals(ELECTRIC) ? AssumedTypes.electric(type) : AssumedTypes.engine(type, Fuel.get(word)));
    }

    /** Fuels of the types of the study. */
    Set<String> fuels() {
        return study.getVehicleTypes().stream().map(TypeGuess::fuel).collect(Collectors.toSet());
    }

    /** What a type runs on. */
    static String fuel(VehicleType type) {
        return type instanceof CombustionType engine ? engine.getFuel().getLiteral() : ELECTRIC;
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
