package org.amberyard.charts;

import java.awt.Color;
import java.util.List;
import java.util.stream.LongStream;

/**
 * Savings in round steps, so that they show in print too; the strongest colour lies farthest from costing the same.
 *
 * @param step width of a band, 1, 2 or 5 of a power of ten
 * @param lowest number of the lowest band; that from nothing on is 0
 * @param highest number of the highest
 */
record SavingBands(double step, long lowest, long highest) {
    private static final double FEWEST = 5;
    private static final double[] ROUND = {1, 2, 5, 10};
    private static final double PALEST = 0.15;
    private static final double STRONGEST = 0.85;

    /** Bands for savings from a least to a most one; one band where they are the same. */
    static SavingBands of(double least, double most) {
        double step = most > least ? roundStep((most - least) / FEWEST) : 1;
        return new SavingBands(step, band(least, step), band(most, step));
    }

    /** The largest round step that is not above a width. */
    private static double roundStep(double width) {
        double power = Math.pow(10, Math.floor(Math.log10(width)));
        double step = power;
        for (double round : ROUND) {
            step = round * power <= width ? round * power : step;
        }
        return step;
    }

    private static long band(double value, double step) {
        return (long) Math.floor(value / step);
    }

    /** The savings at which bands meet, but for none at all. */
    List<Double> between() {
        return LongStream.rangeClosed(lowest + 1, highest).filter(band -> band != 0).mapToObj(band -> band * step).toList();
    }

    Color colour(double saving, ChartTheme theme) {
        long band = Math.max(lowest, Math.min(highest, band(saving, step)));
        long nearest = lowest < 0 && highest >= 0 ? 0 : Math.min(far(lowest), far(highest));
        long farthest = Math.max(far(lowest), far(highest));
        double share = farthest > nearest ? (double) (far(band) - nearest) / (farthest - nearest) : 1;
        return ChartTheme.between(theme.background(), band < 0 ? theme.fails(false) : theme.passes(false), PALEST + (STRONGEST - PALEST) * share);
    }

    /** Bands between one and costing the same. */
    private static long far(long band) {
        return band < 0 ? -band - 1 : band;
    }
}
