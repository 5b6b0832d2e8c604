package org.amberyard.core.plan;

import java.util.List;
import org.amberyard.core.funding.FundedLine;
import org.amberyard.core.funding.NewBus;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.MoneyRules;

/**
 * What the project of a plan costs: the new buses that replace others otherwise than the baseline does, ports, works, training
 * and tools as they are first bought, in the money that the study states, not discounted. Renewals are no part of it, and awards
 * count whenever they are paid; low-carbon credits and operating aid are no grants.
 *
 * @param capital what is bought
 * @param grant what programmes award for it and do not take back
 */
public record ProjectCost(double capital, double grant) {
    private static final ProjectCost NOTHING = new ProjectCost(0, 0);

    /** The whole project of a plan. */
    public static ProjectCost of(PlanResult plan, List<ReplacedBus> buses) {
        ProjectCost sum = NOTHING;
        for (ReplacedBus bus : buses) {
            sum = sum.plus(of(plan, bus));
        }
        for (FundedLine line : plan.funding().awards().lines()) {
            sum = line.purchase().bus().isEmpty() ? sum.plus(of(plan, line)) : sum;
        }
        return sum;
    }

    /** One bus; a bus that only moved costs nothing. */
    public static ProjectCost of(PlanResult plan, ReplacedBus bus) {
        return plan.funding().awards().lines().stream().filter(line -> bus.bought() && line.purchase().bus().map(NewBus::unit)
                .filter(bus.now().vehicle().unit()::equals).isPresent()).findFirst().map(line -> of(plan, line)).orElse(NOTHING);
    }

    private static ProjectCost of(PlanResult plan, FundedLine line) {
        MoneyRules rules = plan.ledger().rules();
        int year = line.purchase().year();
        CostCategory category = CostCategory.FUNDING;
        double stated = rules.stated(1, category, year) / rules.rates().inflationFactor(rules.time(category, year));
        return new ProjectCost(line.purchase().cost() * stated, (line.funded() - plan.funding().takenBack(line)) * stated);
    }

    private ProjectCost plus(ProjectCost other) {
        return new ProjectCost(capital + other.capital, grant + other.grant);
    }
}
