package org.amberyard.core.plan;

import java.util.OptionalInt;
import java.util.Set;
import org.amberyard.core.math.Checks;

/**
 * A rule by which the steps of a plan are written, to be painted over by hand afterwards.
 *
 * @param pace how the years are chosen
 * @param number age in years, or buses a year; without effect where all are replaced by a year
 * @param firstYear first year in which buses are replaced, counted from the base year
 * @param lastYear last year in which buses are replaced
 * @param electric true when electric buses are bought, where one does the route; false for the successor of each type
 * @param roles roles of the places that it is for
 * @param ports ports to be bought with electric buses, if any
 */
public record FillRule(Pace pace, int number, int firstYear, int lastYear, boolean electric, Set<Role> roles, PortRule ports) {

    /** How the years are chosen; within a year the oldest bus comes first. */
    public enum Pace {
        /** Each bus in the year in which it reaches an age. */
        AT_AGE,
        /** So many a year. */
        PER_YEAR,
        /** All by a year, as evenly as whole buses go. */
        ALL_BY
    }

    /**
     * Ports that follow the buses.
     *
     * @param port place of the port type; empty buys none
     * @param busesPerPort electric buses that share a port
     */
    public record PortRule(OptionalInt port, double busesPerPort) {

        /** No ports. */
        public static final PortRule NONE = new PortRule(OptionalInt.empty(), 1);

        public PortRule {
            Checks.positive("Buses per port", busesPerPort);
        }
    }

    /**
     * @throws IllegalArgumentException when the years run backwards or the number is below one
     */
    public FillRule {
        if (lastYear < firstYear) {
            throw new IllegalArgumentException("The last year, " + lastYear + ", lies before the first, " + firstYear);
        }
        if (pace != Pace.ALL_BY && number < 1) {
            throw new IllegalArgumentException("The number must be at least 1 but is " + number);
        }
        roles = Set.copyOf(roles);
    }
}
