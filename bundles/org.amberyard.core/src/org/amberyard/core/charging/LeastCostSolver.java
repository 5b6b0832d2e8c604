package org.amberyard.core.charging;

import java.util.Arrays;
import java.util.List;

/**
 * The least-cost problem of a month, to be asked again with other demand prices, floors and a level of energy prices. What is
 * learnt about the month stays valid, so that a further answer takes microseconds.
 *
 * <p><b>Method.</b> Let D be a level for each demand charge, not below its floor, that no counted step may exceed. For a given D
 * each step has a limit, and prices depend on the step alone. Let c₁ &lt; … &lt; cₘ be a stretch's prices and Fⱼ(D) the largest
 * flow of energy to its sessions in steps of price cⱼ or below. Every schedule draws at most Fⱼ at cⱼ or below; a schedule that
 * draws exactly Fⱼ for every j exists, because a flow that is largest in the cheaper steps grows to a largest one without taking
 * energy out of them. Hence, with E the energy of the sessions, a stretch costs at least, and at best,
 *
 * <pre>cₘ·E − Σ (cⱼ₊₁ − cⱼ)·Fⱼ(D) over j &lt; m, where Fₘ(D) = E,</pre>
 *
 * (summing by parts), and D is feasible exactly where Fₘ(D) = E. By the theorem of max-flow and min-cut Fⱼ is the least of
 * finitely many functions linear in D: each cut of the flow is an upper bound whose slope is the length of the steps that it
 * holds back by their demand level. So the month is a linear programme in D and the Fⱼ alone. It is solved by cutting planes
 * (Kelley 1960): solve with the cuts known, find the flows at the levels found, add the cuts that are violated. That ends,
 * because cuts are finitely many, and what it ends with is a lower bound and a schedule that attains it.
 *
 * <p>Not safe for use by several threads.
 */
public final class LeastCostSolver {
    private final DeliverableMonth month;
    private final MonthCuts cuts;

    /** Prepares a month; energy that no schedule can deliver is left out and stands in {@link #shortfalls}. */
    public LeastCostSolver(MonthProblem problem) {
        month = DeliverableMonth.of(problem);
        cuts = new MonthCuts(month);
    }

    /** Sessions that cannot be ready. */
    public List<SessionShortfall> shortfalls() {
        return month.shortfalls();
    }

    /** Schedules the month at demand prices and floors. */
    public LeastCostMonth month(double[] demandPrices, double[] demandFloorsKw) {
        LeastCostBill bill = bill(demandPrices, demandFloorsKw, 1);
        return new LeastCostMonth(schedule(demandPrices, demandFloorsKw, bill.levelsKw()), bill.lowerBound(), month.shortfalls());
    }

    /** The cheapest schedule within demand levels, billed at demand prices and floors. */
    MonthSchedule schedule(double[] demandPrices, double[] demandFloorsKw, double[] levelsKw) {
        MonthProblem asked = month.problem().with(demandPrices, demandFloorsKw);
        return MonthSchedule.of(asked, EvenSchedule.of(month, levelsKw));
    }

    /**
     * Costs the month without making the schedule.
     *
     * @param demandPrices price of each demand charge, money/kW
     * @param demandFloorsKw demand that each charge bills at least, kW
     * @param energyPriceFactor factor on all prices of energy
     */
    public LeastCostBill bill(double[] demandPrices, double[] demandFloorsKw, double energyPriceFactor) {
        double[] lowestKw = demandFloorsKw.clone();
        double[] highestKw = new double[lowestKw.length];
        Arrays.fill(highestKw, Double.POSITIVE_INFINITY);
        for (int charge = 0; charge < lowestKw.length; charge++) {
            if (demandPrices[charge] == 0) {
                lowestKw[charge] = Math.max(lowestKw[charge], month.levels().usefulKw()[charge]);
            }
        }
        if (!cuts.solve(demandPrices, lowestKw, highestKw, energyPriceFactor)) {
            throw new IllegalStateException("No demand levels have the sessions ready, though without any they are");
        }
        double demandCost = 0;
        for (int charge = 0; charge < lowestKw.length; charge++) {
            demandCost += demandPrices[charge] * cuts.levelsKw()[charge];
        }
        return new LeastCostBill(cuts.levelsKw(), cuts.energyCost(), demandCost, cuts.lowerBound());
    }

    MonthLevels levels() {
        return month.levels();
    }

    MonthCuts cuts() {
        return cuts;
    }
}
