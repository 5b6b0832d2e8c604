package org.amberyard.core.charging;

import java.util.Arrays;

/**
 * Power that the plan of a stretch leaves, by step, kW.
 *
 * @param belowDemand what could be drawn beyond the plan without a higher billed demand
 * @param belowLimit what could be drawn beyond it within the limit of the site
 */
public record SpareKw(double[] belowDemand, double[] belowLimit) {

    /** A stretch in which nothing limits the power. */
    public static SpareKw unlimited(int steps) {
        double[] endless = new double[steps];
        Arrays.fill(endless, Double.POSITIVE_INFINITY);
        return new SpareKw(endless, endless.clone());
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
