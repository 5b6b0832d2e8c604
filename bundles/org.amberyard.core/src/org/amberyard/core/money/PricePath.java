package org.amberyard.core.money;

import java.util.List;

/**
 * A price over the years relative to the value that the study states, in constant money: a steady rise, or points by year.
 *
 * @param level factor on all years; 1 unless it is asked what another price would mean, or the price is in money of an earlier date
 * @param realRise yearly rise above general inflation; counts when there are no points
 * @param points factors by year of the study, years rising; between them the factor is interpolated, beyond them it stays
 * @param yearsBefore years that the price has risen before the base date, since it is of an earlier date
 */
public record PricePath(double level, double realRise, List<Point> points, int yearsBefore) {

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

    /** A path at the level of the study's price, which is of the base date. */
    public PricePath(double realRise, List<Point> points) {
        this(1, realRise, points, 0);
    }

    /** The same at a multiple of its level. */
    public PricePath times(double factor) {
        return new PricePath(factor * level, realRise, points, yearsBefore);
    }

    /** The same with another steady rise. */
    public PricePath rising(double otherRise) {
        return new PricePath(level, otherRise, points, yearsBefore);
    }

    /**
     * The path of a price that is stated in money of an earlier date.
     *
     * @param years years from that date to the base date
     * @param inflation general inflation over them: money of the base date over money of that date
     */
    public PricePath stated(int years, double inflation) {
        return new PricePath(inflation * level, realRise, points, years);
    }

    /** What the price is multiplied with before its rise from the base date on. */
    public double atBaseDate() {
        return level * (points.isEmpty() ? Math.pow(1 + realRise, yearsBefore) : 1);
    }

    /**
     * Price over the price that the study states.
     *
     * @param year year of the study in which it is paid
     * @param timeYears time of payment after the base date
     */
    public double factor(int year, double timeYears) {
        return level * (points.isEmpty() ? Math.pow(1 + realRise, yearsBefore + timeYears) : interpolated(year));
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
