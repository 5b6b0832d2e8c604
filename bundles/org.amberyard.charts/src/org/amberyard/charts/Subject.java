package org.amberyard.charts;

/**
 * The part of a study that stands behind something in a chart.
 *
 * @param kind kind of part
 * @param place its place in the study's list of that kind
 */
public record Subject(Kind kind, int place) {

    /** Kinds of part. */
    public enum Kind {
        /** A route. */
        ROUTE,
        /** A vehicle type. */
        TYPE,
        /** A bus of the present fleet. */
        BUS,
        /** A plan. */
        PLAN,
        /** The emission factors; there is one set of them, at place 0. */
        FACTORS
    }
}
