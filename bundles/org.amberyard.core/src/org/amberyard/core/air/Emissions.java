package org.amberyard.core.air;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.Predicate;

/**
 * Emissions by source.
 *
 * @param bySource masses of each source that emits anything
 */
public record Emissions(Map<EmissionSource, Masses> bySource) {

    /** Nothing emitted. */
    public static final Emissions NONE = new Emissions(Map.of());

    public Emissions {
        bySource = Map.copyOf(bySource);
    }

    /** Masses of a source. */
    public Masses of(EmissionSource source) {
        return bySource.getOrDefault(source, Masses.NONE);
    }

    /** All that counts in a total; what is upstream of the tank does not. */
    public Masses total() {
        return sum(EmissionSource::inTotal);
    }

    /** What leaves exhaust pipes of buses, heaters included. */
    public Masses exhaust() {
        return sum(EmissionSource::exhaust);
    }

    /** Dust of brakes and tyres. */
    public Masses wear() {
        return of(EmissionSource.BRAKES).plus(of(EmissionSource.TYRES));
    }

    private Masses sum(Predicate<EmissionSource> counts) {
        Masses sum = Masses.NONE;
        for (EmissionSource source : EmissionSource.values()) {
            sum = counts.test(source) ? sum.plus(of(source)) : sum;
        }
        return sum;
    }

    /** These and others. */
    public Emissions plus(Emissions other) {
        Map<EmissionSource, Masses> sum = new EnumMap<>(EmissionSource.class);
        sum.putAll(bySource);
        other.bySource.forEach((source, masses) -> sum.merge(source, masses, Masses::plus));
        return new Emissions(sum);
    }

    /** With other masses of one source. */
    public Emissions with(EmissionSource source, Masses masses) {
        Map<EmissionSource, Masses> changed = new EnumMap<>(EmissionSource.class);
        changed.putAll(bySource);
        changed.put(source, masses);
        return new Emissions(changed);
    }
}
