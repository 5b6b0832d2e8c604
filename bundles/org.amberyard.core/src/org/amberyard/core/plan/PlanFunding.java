package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.amberyard.core.funding.AwardLedger;
import org.amberyard.core.funding.Clawback;
import org.amberyard.core.funding.FundedLine;
import org.amberyard.core.funding.FundingFlow;
import org.amberyard.core.funding.Payment;
import org.amberyard.core.funding.Payments;
import org.amberyard.core.funding.Programme;
import org.amberyard.core.funding.Repayment;
import org.amberyard.core.funding.Withheld;
import org.amberyard.core.money.CostLedger;

/**
 * What programmes, credits and aids bring in a plan.
 *
 * @param awards what programmes pay for each line, money of the year of purchase
 * @param payments when awards become money
 * @param repayments what is paid back for buses that leave service before their time
 * @param withheld what is not paid any more for such buses
 * @param flows all money that moves, as it stands in the ledger
 */
public record PlanFunding(AwardLedger awards, List<Payment> payments, List<Repayment> repayments, List<Withheld> withheld,
        List<FundingFlow> flows) {

    public PlanFunding {
        payments = List.copyOf(payments);
        repayments = List.copyOf(repayments);
        withheld = List.copyOf(withheld);
        flows = List.copyOf(flows);
    }

    /**
     * Funding of a plan.
     *
     * @param book prices of the study
     * @param awards what programmes pay for the purchases of the plan
     * @param course what happens in it
     * @param costs its costs without any funding
     */
    static PlanFunding of(PriceBook book, AwardLedger awards, PlanCourse course, CostLedger costs) {
        StudyInput study = book.study();
        List<Programme> programmes = study.funding().programmes();
        Clawback settled = settled(awards, programmes, course.fleet());
        List<FundingFlow> flows = new ArrayList<>();
        AwardFlows moved = new AwardFlows(awards, programmes);
        settled.payments().forEach(p -> flows.add(moved.of(p)));
        settled.repayments().forEach(r -> flows.add(moved.of(r)));
        List<FundingFlow> earned = CreditFlows.of(study, course.yards());
        flows.addAll(earned);
        flows.addAll(new AidFlows(study, awards, course.fleet(), costs, earned).all());
        return new PlanFunding(awards, settled.payments(), settled.repayments(), settled.withheld(), flows);
    }

    /** What programmes take back of the awards of a line: what is paid back and what is withheld, money of the year of the award. */
    public double takenBack(FundedLine line) {
        int place = awards.lines().indexOf(line);
        return repayments.stream().filter(r -> r.line() == place).mapToDouble(Repayment::amount).sum()
                + withheld.stream().filter(w -> w.line() == place).mapToDouble(Withheld::amount).sum();
    }

    /** What is paid of awards and what is paid back. */
    static Clawback settled(AwardLedger awards, List<Programme> programmes, FleetHistory fleet) {
        return Clawback.of(awards, programmes, Payments.of(awards, programmes), leaving(fleet));
    }

    /** Year in which buses leave the fleet, by their number. */
    static Map<String, Integer> leaving(FleetHistory fleet) {
        Map<String, Integer> left = new HashMap<>();
        fleet.events().stream().filter(FleetEvent.Sold.class::isInstance)
                .forEach(e -> left.put(e.vehicle().unit(), e.year()));
        return left;
    }
}
