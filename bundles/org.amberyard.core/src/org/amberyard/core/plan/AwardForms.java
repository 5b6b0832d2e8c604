package org.amberyard.core.plan;

import org.amberyard.core.funding.AwardLedger;
import org.amberyard.core.funding.Clawback;
import org.amberyard.core.funding.FundingFlow;
import org.amberyard.core.funding.Payment;
import org.amberyard.core.funding.Repayment;
import org.amberyard.core.money.CostCategory;

/** Awards of a plan under other prices of what it buys: the programmes are applied anew. */
final class AwardForms {
    private final PlanCosts costs;
    private final PlanInput plan;
    private final PricePoints points;
    private final double[] presentPaid;
    private final double[] presentRepaid;
    private final double[] appropriationPaid;
    private final double[] appropriationRepaid;

    private AwardForms(PlanResult plan, PricePoints points) {
        this.costs = plan.costs();
        this.plan = plan.plan();
        this.points = points;
        int years = 1 + lastYear();
        presentPaid = new double[years];
        presentRepaid = new double[years];
        appropriationPaid = new double[years];
        appropriationRepaid = new double[years];
        for (int year = 0; year < years; year++) {
            weigh(FundingFlow.Kind.AWARD, year, presentPaid, appropriationPaid);
            weigh(FundingFlow.Kind.REPAYMENT, year, presentRepaid, appropriationRepaid);
        }
    }

    /** Awards of a plan. */
    static AwardForms of(PlanResult plan, PricePoints points) {
        return new AwardForms(plan, points);
    }

    /** True when a price that moves is that of something that programmes may pay for. */
    static boolean move(PlanResult plan, PricePoints points) {
        PointBook asked = new PointBook(points, new double[0]);
        plan.costs().lines().at(asked);
        return asked.asksWhatMoves() && !points.book().study().funding().programmes().isEmpty();
    }

    /** Last year in which an award can be paid. */
    private int lastYear() {
        StudyInput study = points.book().study();
        return study.years() + study.funding().programmes().stream().mapToInt(p -> p.payout().lagYears()
                + p.payout().against().map(tax -> tax.carryYears()).orElse(0)).max().orElse(0);
    }

    private void weigh(FundingFlow.Kind kind, int year, double[] present, double[] appropriation) {
        StudyInput study = points.book().study();
        MoneyWeights weights = new MoneyWeights(study.money());
        CostCategory category = FundingCosts.category(study, kind, year);
        int counts = Math.min(year, study.years() - 1);
        double stated = FundingCosts.factor(study, kind, year);
        present[year] = stated * weights.presentOfStated(category, counts);
        appropriation[year] = stated * weights.appropriationOfStated(category, counts);
    }

    /**
     * Takes awards off the results of a plan.
     *
     * @param prices prices at their places
     * @param results present cost at a place, appropriations by year from another on
     * @return false when other old buses are scrapped than in the plan as it was evaluated
     */
    boolean take(double[] prices, double[] results, int presentCost, int appropriations) {
        StudyInput study = points.book().study();
        AwardLedger awards = PlanAwards.of(new PointBook(points, prices), plan, costs.lines());
        FleetHistory fleet = costs.course().fleet();
        if (!PlanAwards.scrapped(study, awards).equals(fleet.scrapped())) {
            return false;
        }
        Clawback settled = PlanFunding.settled(awards, study.funding().programmes(), fleet);
        for (Payment payment : settled.payments()) {
            results[presentCost] -= payment.amount() * presentPaid[payment.year()];
            results[appropriations + counts(payment.year())] -= payment.amount() * appropriationPaid[payment.year()];
        }
        for (Repayment repayment : settled.repayments()) {
            results[presentCost] += repayment.amount() * presentRepaid[repayment.year()];
            results[appropriations + counts(repayment.year())] += repayment.amount() * appropriationRepaid[repayment.year()];
        }
        return true;
    }

    private int counts(int year) {
        return Math.min(year, points.book().study().years() - 1);
    }
}
