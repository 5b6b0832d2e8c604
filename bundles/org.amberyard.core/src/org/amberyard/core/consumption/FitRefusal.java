package org.amberyard.core.consumption;

/**
 * Why a curve cannot be fitted to the logs. The figures depend on the cause.
 *
 * @param cause what is wrong
 * @param found what the logs have
 * @param needed what they would need
 */
public record FitRefusal(Cause cause, double found, double needed) implements FitOutcome {

    /** What is wrong with the logs. */
    public enum Cause {
        /** Fewer entries than five, or than the terms and two more: number found, number needed. */
        TOO_FEW_ENTRIES,
        /** No entry is clearly below the mild temperature: coldest found, highest that would do, °C. */
        NOTHING_COLD,
        /** No entry tells its hours, and heat counts per hour: entries with hours found and needed. */
        HOURS_UNKNOWN,
        /**
         * The cold entries were driven at nearly the same mean speed, so that rise per distance and heat per hour cannot be
         * told apart: condition index found and allowed. A known rise helps.
         */
        SPEEDS_ALIKE,
        /** The entries' temperatures lie too close together to tell the terms apart: condition index found and allowed. */
        TEMPERATURES_ALIKE,
        /** The best fit drives for nothing: base found, and the base that it must exceed, kWh/km. */
        NO_BASE
    }
}
