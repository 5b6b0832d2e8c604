package org.amberyard.core.money;

import java.util.List;

/**
 * A price over the years relative to its base-date value, in constant money: a steady rise, or points by year.
 *
 * @param level factor on all years; 1 unless it is asked what another price would mean
 * @param realRise yearly rise above general inflation; counts when there are no points
 * @param points factors by year of the study, years rising; between them the factor is interpolated, beyond them it stays
 */
public record PricePath(double level, double realRise, List<Point> points) {

    /** A price that stays. */
    public static final PricePath FLAT = new PricePath(0, List.of());

    /**
     * Factor in one year.
     *
     * @param year year of the study, 0 for the base year
     * @param factor price over base-date price, in constant money
     */
    public record Point(int year, double factor) {
    }

    public PricePath {
        points = List.copyOf(points);
    }

    /** A path at the level of the study's price. */
    public PricePath(double realRise, List<Point> points) {
        this(1, realRise, points);
    }

    /** The same at another level. */
    public PricePath at(double otherLevel) {
        return new PricePath(otherLevel, realRise, points);
    }

    /**
     * Price over base-date price.
     *
     * @param year year of the study in which it is paid
     * @param timeYears time of payment after the base date
     */
    public double factor(int year, double timeYears) {
        return level * (points.isEmpty() ? Math.pow(1 + realRise, timeYears) : interpolated(year));
    }

    private double interpolated(int year) {
        Point before = points.get(0);
        for (Point after : points) {
            if (after.year() >= year) {
                return between(before, after, year);
            }
            before = after;
        }
        return before.factor();
    }

    private static double between(Point before, Point after, int year) {
        if (after.year() == before.year() || year <= before.year()) {
            return year <= before.year() ? before.factor() : after.factor();
        }
        double share = (double) (year - before.year()) / (after.year() - before.year());
        return before.factor() + share * (after.factor() - before.factor());
    }
}
