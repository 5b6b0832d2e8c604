package org.amberyard.core.charging;

/**
 * Bounds of the demand levels of a month.
 *
 * @param lowestKw demand of the load that cannot be moved, by demand charge, kW
 * @param usefulKw demand above which a level no longer holds anything back, by demand charge, kW
 */
record MonthLevels(double[] lowestKw, double[] usefulKw) {

    static MonthLevels of(MonthProblem problem) {
        double[] lowestKw = new double[problem.demandPrices().length];
        double[] usefulKw = new double[lowestKw.length];
        for (StretchProblem stretch : problem.stretches()) {
            double[] chargingKw = chargingKw(stretch);
            for (int step = 0; step < stretch.steps(); step++) {
                for (int charge = 0; charge < lowestKw.length; charge++) {
                    if (stretch.counts(charge, step)) {
                        lowestKw[charge] = Math.max(lowestKw[charge], stretch.baseKw()[step]);
                        usefulKw[charge] = Math.max(usefulKw[charge], stretch.baseKw()[step] + chargingKw[step]);
                    }
                }
            }
        }
        return new MonthLevels(lowestKw, usefulKw);
    }

    private static double[] chargingKw(StretchProblem stretch) {
        double[] kw = new double[stretch.steps()];
        for (Session session : stretch.sessions()) {
            for (int step = session.fromStep(); step < session.toStep(); step++) {
                kw[step % kw.length] += session.limitKw() * session.share(step);
            }
        }
        return kw;
    }
}
