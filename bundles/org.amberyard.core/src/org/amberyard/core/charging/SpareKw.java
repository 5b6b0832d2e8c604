package org.amberyard.core.charging;

import java.util.Arrays;

/**
 * Power that the plan of a stretch leaves, by step, kW.
 *
 * @param belowDemand what could be drawn beyond the plan without a higher billed demand
 * @param belowLimit what could be drawn beyond it within the limit of the site
 */
public record SpareKw(double[] belowDemand, double[] belowLimit) {
    private static final double ROUNDING_KW = 1e-6;

    /** A stretch in which nothing limits the power. */
    public static SpareKw unlimited(int steps) {
        double[] endless = new double[steps];
        Arrays.fill(endless, Double.POSITIVE_INFINITY);
        return new SpareKw(endless, endless.clone());
    }

    /** The same, to be used up apart from this. */
    SpareKw copy() {
        return new SpareKw(belowDemand.clone(), belowLimit.clone());
    }

    /** What is left when a load is drawn in place of another, by step, kW. */
    SpareKw less(double[] drawnKw, double[] insteadOfKw) {
        SpareKw left = copy();
        for (int step = 0; step < drawnKw.length; step++) {
            left.belowDemand[step] -= drawnKw[step] - insteadOfKw[step];
            left.belowLimit[step] -= drawnKw[step] - insteadOfKw[step];
        }
        return left;
    }

    /** True when the limit of the site is kept. */
    boolean withinLimit() {
        return Arrays.stream(belowLimit).allMatch(kw -> kw >= -ROUNDING_KW);
    }

    /** What a schedule of a month leaves in one of its stretches. */
    public static SpareKw of(MonthProblem month, MonthSchedule planned, int place) {
        StretchProblem stretch = month.stretches().get(place);
        double[] totalKw = MonthSchedule.totalKw(stretch, planned.kw().get(place));
        double[] belowDemand = new double[totalKw.length];
        double[] belowLimit = new double[totalKw.length];
        for (int step = 0; step < totalKw.length; step++) {
            belowLimit[step] = month.siteLimitKw() - totalKw[step];
            belowDemand[step] = belowLimit[step];
            for (int charge = 0; charge < month.demandPrices().length; charge++) {
                if (month.demandPrices()[charge] > 0 && stretch.counts(charge, step)) {
                    belowDemand[step] = Math.min(belowDemand[step], planned.demandKw()[charge] - totalKw[step]);
                }
            }
        }
        return new SpareKw(belowDemand, belowLimit);
    }
}
