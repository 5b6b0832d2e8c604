package org.amberyard.core.plan;

import org.amberyard.core.funding.FundingInput;

/** Awards of a plan under other prices of what it buys. */
interface MovedAwards {

    /**
     * Takes awards off the results of a plan.
     *
     * @param prices prices at their places
     * @param results present cost at a place, appropriations by year from another on
     * @return false when other old buses are scrapped than in the plan as it was evaluated
     */
    boolean take(double[] prices, double[] results, int presentCost, int appropriations);

    /** True when a price that moves is that of something that programmes may pay for. */
    static boolean move(PlanResult plan, PricePoints points) {
        PointBook asked = new PointBook(points, new double[0]);
        plan.costs().lines().at(asked);
        return asked.asksWhatMoves() && !points.book().study().funding().programmes().isEmpty();
    }

    /** Of a plan: in sums, or, where awards lower taxes, from the whole rules. */
    static MovedAwards of(PlanResult plan, PricePoints points) {
        FundingInput funding = points.book().study().funding();
        return funding.programmes().stream().allMatch(p -> p.payout().against().isEmpty()) ? new AwardForms(plan, points)
                : new AwardsAnew(plan, points);
    }
}
