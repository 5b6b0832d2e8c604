package org.amberyard.core.charging;

import java.util.List;

/**
 * How a month is charged, and what it costs.
 *
 * @param kw power at the meter by stretch, session and step, kW; shared, not to be changed
 * @param demandKw demand that each demand charge bills, kW
 * @param energyCost energy, the load that cannot be moved included, money
 * @param demandCost demand charges, money
 */
public record MonthSchedule(List<double[][]> kw, double[] demandKw, double energyCost, double demandCost) {

    public MonthSchedule {
        kw = List.copyOf(kw);
    }

    /** Bills a schedule. */
    public static MonthSchedule of(MonthProblem problem, List<double[][]> kw) {
        double[] demandKw = problem.demandFloorsKw().clone();
        double energyCost = 0;
        for (int place = 0; place < kw.size(); place++) {
            StretchProblem stretch = problem.stretches().get(place);
            double[] totalKw = totalKw(stretch, kw.get(place));
            energyCost += stretch.times() * stretch.energyCost(totalKw);
            raise(demandKw, stretch, totalKw);
        }
        double demandCost = 0;
        for (int charge = 0; charge < demandKw.length; charge++) {
            demandCost += problem.demandPrices()[charge] * demandKw[charge];
        }
        return new MonthSchedule(kw, demandKw, energyCost, demandCost);
    }

    /** Load of a stretch by step, kW. */
    static double[] totalKw(StretchProblem stretch, double[][] kw) {
        double[] totalKw = stretch.baseKw().clone();
        for (double[] session : kw) {
            for (int step = 0; step < totalKw.length; step++) {
                totalKw[step] += session[step];
            }
        }
        return totalKw;
    }

    private static void raise(double[] demandKw, StretchProblem stretch, double[] totalKw) {
        for (int step = 0; step < totalKw.length; step++) {
            for (int charge = 0; charge < demandKw.length; charge++) {
                if (stretch.counts(charge, step)) {
                    demandKw[charge] = Math.max(demandKw[charge], totalKw[step]);
                }
            }
        }
    }

    /** Power of charging, summed over all sessions and steps, kW: a measure of the energy. */
    public double chargingKw() {
        double sum = 0;
        for (double[][] stretch : kw) {
            for (double[] session : stretch) {
                for (double stepKw : session) {
                    sum += stepKw;
                }
            }
        }
        return sum;
    }

    /** Cost of energy and demand, money. */
    public double cost() {
        return energyCost + demandCost;
    }
}
