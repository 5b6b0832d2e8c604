package org.amberyard.core.air;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * What one cause emits: a factor for each pollutant that the cause answers for. A pollutant that it answers for but whose factor
 * is not known makes the mass unknown, never zero; all others are no matter of this cause and zero.
 *
 * @param factors factor by pollutant; empty where it is not known
 */
public record EmissionRates(Map<Pollutant, Optional<Factor>> factors) {

    public EmissionRates {
        factors = Map.copyOf(factors);
    }

    /** Rates of a cause; of the pollutants that it answers for, those without a factor are not known. */
    public static EmissionRates of(EmissionCause cause, Map<Pollutant, Factor> known) {
        Map<Pollutant, Optional<Factor>> all = new EnumMap<>(Pollutant.class);
        cause.pollutants().forEach(p -> all.put(p, Optional.empty()));
        known.forEach((pollutant, factor) -> all.put(pollutant, Optional.of(factor)));
        return new EmissionRates(all);
    }

    /** Factor of a pollutant, if the cause answers for it and it is known. */
    public Optional<Factor> factor(Pollutant pollutant) {
        return factors.getOrDefault(pollutant, Optional.empty());
    }

    /** True when the cause answers for a pollutant. */
    public boolean answersFor(Pollutant pollutant) {
        return factors.containsKey(pollutant);
    }

    /** Masses for an amount of the cause; nothing of it emits nothing, whatever is known. */
    public Masses of(double activity) {
        if (activity == 0) {
            return Masses.NONE;
        }
        Masses.Builder masses = new Masses.Builder();
        factors.forEach((pollutant, factor) -> {
            if (factor.isPresent()) {
                masses.set(pollutant, factor.get().kg(activity), factor.get().placeholder());
            } else {
                masses.set(pollutant, Double.NaN, false);
            }
        });
        return masses.build();
    }

    /** On the straight line to other rates of the same cause; known where both are. */
    EmissionRates towards(EmissionRates other, double share) {
        Map<Pollutant, Optional<Factor>> between = new EnumMap<>(Pollutant.class);
        factors.forEach((pollutant, factor) -> between.put(pollutant,
                factor.flatMap(f -> other.factor(pollutant).map(o -> f.towards(o, share)))));
        return new EmissionRates(between);
    }

    /** All factors multiplied. */
    EmissionRates times(double by) {
        Map<Pollutant, Optional<Factor>> multiplied = new EnumMap<>(Pollutant.class);
        factors.forEach((pollutant, factor) -> multiplied.put(pollutant, factor.map(f -> f.times(by))));
        return new EmissionRates(multiplied);
    }
}
