package org.amberyard.core.charging;

/** Charging at the lowest bill that has every bus ready. */
public final class LeastCost {
    private LeastCost() {
    }

    /** Schedules a month. */
    public static LeastCostMonth of(MonthProblem problem) {
        return new LeastCostSolver(problem).month(problem.demandPrices(), problem.demandFloorsKw());
    }
}
