package org.amberyard.core.plan;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.amberyard.core.duty.BlockCheck;

/**
 * A way to get a duty done that an electric bus fails, evaluated by driving the route again.
 *
 * @param measures what is done, one or several together
 * @param type vehicle type that then serves the route
 * @param swapRoute route that the electric bus takes over in a swap
 * @param after outcome of the electric bus on its worst day with an aged pack; that on the other route in a swap; that before
 *            where an engine takes over
 * @param cures true when the duty is done to the end of the pack's service
 * @param recoveredKm distance gained on the worst day, km
 * @param costPerYear cost of the remedy in a typical year, base-date money; negative when it saves
 */
public record Remedy(List<Measure> measures, int type, OptionalInt swapRoute, BlockCheck.Outcome after, boolean cures,
        double recoveredKm, double costPerYear) {

    /** Things that can be done. */
    public enum Measure {
        /** Cabin and pack are brought to temperature on the yard's power before departure. */
        PRECONDITION("precondition at the yard"),
        /** The bus is plugged in between runs at the yard. */
        MIDDAY_CHARGE("charge between runs"),
        /** A fuel-fired heater warms the cabin. */
        FUEL_FIRED_HEAT("fuel-fired heat"),
        /** A type with a larger pack. */
        LARGER_PACK("larger pack"),
        /** The bus changes places with that of a shorter route. */
        SWAP_ROUTE("swap with a shorter route"),
        /** A bus with an engine serves the route. */
        KEEP_ENGINE("keep an engine bus");

        private final String label;

        Measure(String label) {
            this.label = label;
        }

        /** Words for tables. */
        public String label() {
            return label;
        }
    }

    public Remedy {
        measures = List.copyOf(measures);
    }

    /** The measures with the vehicle type or the route that they name, in words. */
    public String words(StudyInput study) {
        return measures.stream().map(measure -> words(study, measure)).collect(Collectors.joining(" and "));
    }

    private String words(StudyInput study, Measure measure) {
        return switch (measure) {
            case LARGER_PACK, KEEP_ENGINE -> measure.label() + ": " + study.types().get(type).name();
            case SWAP_ROUTE -> measure.label() + ": " + study.duty().routes().get(swapRoute.orElseThrow()).name();
            case PRECONDITION, MIDDAY_CHARGE, FUEL_FIRED_HEAT -> measure.label();
        };
    }

    /**
     * Yearly cost per distance recovered on the worst day, money per km; empty when nothing is recovered, and for an engine,
     * whose range is not the matter.
     */
    public OptionalDouble costPerKm() {
        return recoveredKm > 0 && !measures.contains(Measure.KEEP_ENGINE) ? OptionalDouble.of(costPerYear / recoveredKm) : OptionalDouble.empty();
    }
}
