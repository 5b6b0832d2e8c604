package org.amberyard.core.plan;

import org.amberyard.core.funding.AwardLedger;
import org.amberyard.core.funding.Clawback;
import org.amberyard.core.funding.FundingFlow;
import org.amberyard.core.funding.Payment;
import org.amberyard.core.funding.Repayment;

/** Awards found anew by the whole rules of funding, so that credits against taxes share these. */
final class AwardsAnew implements MovedAwards {
    private final PlanCosts costs;
    private final PlanInput plan;
    private final PricePoints points;
    private final AwardWeights paid;
    private final AwardWeights repaid;

    AwardsAnew(PlanResult plan, PricePoints points) {
        this.costs = plan.costs();
        this.plan = plan.plan();
        this.points = points;
        this.paid = new AwardWeights(points.book().study(), FundingFlow.Kind.AWARD);
        this.repaid = new AwardWeights(points.book().study(), FundingFlow.Kind.REPAYMENT);
    }

    @Override
    public boolean take(double[] prices, double[] results, int presentCost, int appropriations) {
        StudyInput study = points.book().study();
        AwardLedger awards = PlanAwards.of(new PointBook(points, prices), plan, costs.lines());
        FleetHistory fleet = costs.course().fleet();
        Clawback settled = PlanFunding.settled(awards, study.funding().programmes(), fleet);
        for (Payment payment : settled.payments()) {
            results[presentCost] -= payment.amount() * paid.present(payment.year());
            results[appropriations + paid.counts(payment.year())] -= payment.amount() * paid.appropriation(payment.year());
        }
        for (Repayment repayment : settled.repayments()) {
            results[presentCost] += repayment.amount() * repaid.present(repayment.year());
            results[appropriations + repaid.counts(repayment.year())] += repayment.amount() * repaid.appropriation(repayment.year());
        }
        return PlanAwards.scrapped(study, awards).equals(fleet.scrapped());
    }
}
