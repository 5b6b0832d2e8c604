package org.amberyard.core.air;

import java.util.List;
import org.amberyard.core.math.Checks;

/**
 * What power plants emit for a kilowatt-hour generated, over the years of a study.
 *
 * @param region where the factors hold
 * @param basis average or marginal
 * @param points factors by year of the study, years rising; at least one
 * @param trend yearly change after the last point, as a share
 * @param lineLossShare share of the generated energy lost before the meter
 */
public record GridPath(String region, GridBasis basis, List<Point> points, double trend, double lineLossShare) {

    /**
     * Factors of one year.
     *
     * @param year year of the study, 0 for the base year
     * @param rates by energy generated
     */
    public record Point(int year, EmissionRates rates) {
    }

    /** @throws IllegalArgumentException when there is no point or a share is out of its range */
    public GridPath {
        points = List.copyOf(points);
        if (points.isEmpty()) {
            throw new IllegalArgumentException("A grid has no factors");
        }
        Checks.rate("Trend of the grid", trend);
        Checks.positive("Share of energy that reaches the meter", 1 - lineLossShare);
    }

    /** Factors of a year by energy generated: between points on a straight line, after the last by the trend. */
    public EmissionRates rates(int year) {
        List<Point> around = around(year);
        Point before = around.get(0);
        if (around.size() == 1) {
            double years = Math.max(0, year - (double) before.year());
            return before.rates().times(Math.pow(1 + trend, years));
        }
        Point after = around.get(1);
        return before.rates().towards(after.rates(), (double) (year - before.year()) / (after.year() - before.year()));
    }

    /** The points on both sides of a year; the last one alone from its year on, the first one alone up to its year. */
    List<Point> around(int year) {
        Point before = null;
        for (Point point : points) {
            if (point.year() > year) {
                return before == null || before.year() == year ? List.of(before == null ? point : before) : List.of(before, point);
            }
            before = point;
        }
        return List.of(before);
    }

    /** Energy to be generated for energy at the meter, kWh. */
    public double generatedKwh(double meterKwh) {
        return meterKwh / (1 - lineLossShare);
    }

    /** Masses for energy at the meter in a year; a published CO2e counts as it is, else the gases by their warming. */
    public Masses of(double meterKwh, int year, WarmingPotentials warming) {
        EmissionRates rates = rates(year);
        Masses masses = rates.of(generatedKwh(meterKwh));
        return rates.answersFor(Pollutant.CO2E) ? masses : masses.withCo2e(warming);
    }
}
