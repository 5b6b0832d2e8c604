package org.amberyard.core.air;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import org.amberyard.core.math.Checks;

/**
 * Social cost of greenhouse gases: the harm of a tonne by gas, year of emission and discount rate, as published tables have
 * it. Between the years of the table a cost is on the straight line, before the first and after the last it stays.
 *
 * @param points the table
 * @param rate discount rate whose column counts
 * @param priceFactor money of the base date over money of the table
 */
public record SocialCosts(List<Point> points, double rate, double priceFactor) {

    /** No table. */
    public static final SocialCosts NONE = new SocialCosts(List.of(), 0, 1);
    private static final double KG_PER_TONNE = 1000;
    /** Rates that are typed as percentages differ by less than this from those of the table. */
    private static final double SAME_RATE = 1e-9;

    /**
     * A cell of the table.
     *
     * @param gas carbon dioxide, methane or nitrous oxide
     * @param calendarYear year of emission
     * @param rate discount rate of the column
     * @param perTonne money of the table per tonne of the gas
     * @param origin where it comes from
     */
    public record Point(Pollutant gas, int calendarYear, double rate, double perTonne, FactorOrigin origin) {
    }

    public SocialCosts {
        points = points.stream().sorted(Comparator.comparingInt(Point::calendarYear)).toList();
        Checks.rate("Discount rate of social costs", rate);
        Checks.positive("Price factor of social costs", priceFactor);
    }

    /** Harm of a tonne of gas emitted in a year, money of the base date; empty where the table has no such column. */
    public OptionalDouble perTonne(Pollutant gas, int calendarYear) {
        Point before = null;
        for (Point point : column(gas)) {
            if (point.calendarYear() >= calendarYear) {
                return OptionalDouble.of(priceFactor * between(before, point, calendarYear));
            }
            before = point;
        }
        return before == null ? OptionalDouble.empty() : OptionalDouble.of(priceFactor * before.perTonne());
    }

    /** The cells of a gas at the rate that counts, years rising. */
    public List<Point> column(Pollutant gas) {
        return points.stream().filter(p -> p.gas() == gas && Math.abs(p.rate() - rate) < SAME_RATE).toList();
    }

    private static double between(Point before, Point after, int year) {
        if (before == null) {
            return after.perTonne();
        }
        double share = (double) (year - before.calendarYear()) / (after.calendarYear() - before.calendarYear());
        return before.perTonne() + share * (after.perTonne() - before.perTonne());
    }

    /**
     * Harm of what a source emits in a year, money of the base date. Where its gases are not known one by one, its CO2e counts as
     * carbon dioxide. Not a number where masses or costs are not known.
     */
    public double of(Masses masses, int calendarYear) {
        return gases(masses).stream().mapToDouble(gas -> cost(gas, masses.kg(gas), calendarYear)).sum();
    }

    /** The gases of which a harm is summed up: one by one where all are known, else their CO2e. */
    public static List<Pollutant> gases(Masses masses) {
        List<Pollutant> all = List.of(Pollutant.CO2, Pollutant.CH4, Pollutant.N2O);
        return all.stream().allMatch(masses::known) ? all : List.of(Pollutant.CO2E);
    }

    private double cost(Pollutant gas, double kg, int calendarYear) {
        Pollutant column = gas == Pollutant.CO2E ? Pollutant.CO2 : gas;
        return kg == 0 ? 0 : kg / KG_PER_TONNE * perTonne(column, calendarYear).orElse(Double.NaN);
    }
}
