package org.amberyard.core.charging;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A month as a function of the year's highest demands: its least cost when no load exceeds them and each demand charge bills at
 * least its share of them. The function is convex, because it is the least value of a linear programme in whose bounds they
 * stand; the prices of these bounds are its slope.
 */
final class RatchetMonth {
    /** Load by which a month may exceed the year's peaks, so that rounding leaves no session short. */
    private static final double SLACK_KW = 1e-7;

    private final MonthProblem problem;
    private final double[] shares;
    private final LeastCostSolver solver;
    private double[] peaksKw;
    private double[] floorsKw;
    private boolean[] free;
    private double freeCost;

    RatchetMonth(MonthProblem problem, double[] shares) {
        this.problem = problem;
        this.shares = shares;
        this.solver = new LeastCostSolver(problem);
    }

    /** Cost below which the month does not come whatever the year's peaks are, money. */
    double leastCost() {
        return solver.bill(problem.demandPrices(), problem.demandFloorsKw(), 1).lowerBound();
    }

    double[] lowestKw() {
        return solver.levels().lowestKw();
    }

    /**
     * Costs the month under peaks of the year, kW.
     *
     * @throws IllegalStateException when the peaks leave sessions short
     */
    void solve(double[] yearPeaksKw) {
        peaksKw = yearPeaksKw;
        floorsKw = floorsKw(problem, shares, yearPeaksKw);
        free = new boolean[shares.length];
        freeCost = 0;
        double[] prices = problem.demandPrices().clone();
        double[] lowestKw = floorsKw.clone();
        double[] highestKw = new double[shares.length];
        for (int charge = 0; charge < shares.length; charge++) {
            highestKw[charge] = shares[charge] > 0 ? peaksKw[charge] + SLACK_KW : Double.POSITIVE_INFINITY;
            free[charge] = prices[charge] == 0 || floorsKw[charge] >= highestKw[charge];
            if (free[charge]) {
                lowestKw[charge] = shares[charge] > 0 ? highestKw[charge] : solver.levels().usefulKw()[charge];
                freeCost += prices[charge] * floorsKw[charge];
                prices[charge] = 0;
            }
        }
        if (!solver.cuts().solve(prices, lowestKw, highestKw, 1)) {
            throw new IllegalStateException("Peaks of " + Arrays.toString(peaksKw) + " kW leave sessions short");
        }
    }

    /** Demand that each charge of a month bills at least by its share of the year's peaks, kW. */
    static double[] floorsKw(MonthProblem month, double[] shares, double[] yearPeaksKw) {
        return IntStream.range(0, shares.length)
                .mapToDouble(charge -> Math.max(month.demandFloorsKw()[charge], shares[charge] * yearPeaksKw[charge])).toArray();
    }

    double cost() {
        return solver.cuts().lowerBound() + freeCost;
    }

    /** How the cost changes with each peak, money/kW. */
    double[] slope() {
        return IntStream.range(0, shares.length).mapToDouble(charge -> shares[charge] > 0 ? slope(charge) : 0).toArray();
    }

    private double slope(int charge) {
        double ratchetKw = shares[charge] * peaksKw[charge];
        double ofPeak = -solver.cuts().savingByHighest(charge);
        if (free[charge]) {
            double ofFloor = ratchetKw > problem.demandFloorsKw()[charge] ? problem.demandPrices()[charge] : 0;
            return ofPeak + solver.cuts().costOfLowest(charge) + shares[charge] * ofFloor;
        }
        boolean ratchetHolds = ratchetKw > Math.max(problem.demandFloorsKw()[charge], lowestKw()[charge]);
        return ofPeak + (ratchetHolds ? shares[charge] * solver.cuts().costOfLowest(charge) : 0);
    }

    /** Rows that the year's peaks must satisfy for the sessions to be ready. */
    List<MonthCuts.ReadyRow> violated(double[] yearPeaksKw) {
        double[] levelsKw = IntStream.range(0, shares.length)
                .mapToDouble(c -> shares[c] > 0 ? yearPeaksKw[c] : solver.levels().usefulKw()[c]).toArray();
        return solver.cuts().violated(levelsKw).stream().map(row -> withoutOthers(row, levelsKw)).toList();
    }

    private MonthCuts.ReadyRow withoutOthers(MonthCuts.ReadyRow row, double[] levelsKw) {
        double[] slopeHours = row.slopeHours().clone();
        double kwh = row.kwh();
        for (int charge = 0; charge < shares.length; charge++) {
            if (shares[charge] == 0) {
                kwh -= slopeHours[charge] * levelsKw[charge];
                slopeHours[charge] = 0;
            }
        }
        return new MonthCuts.ReadyRow(slopeHours, kwh, row.ofKwh());
    }

    /** The schedule of the solution. */
    List<double[][]> kw() {
        return solver.schedule(problem.demandPrices(), problem.demandFloorsKw(), solver.cuts().levelsKw()).kw();
    }

    MonthProblem problem() {
        return problem;
    }

    double[] shares() {
        return shares;
    }

    List<SessionShortfall> shortfalls() {
        return solver.shortfalls();
    }
}
