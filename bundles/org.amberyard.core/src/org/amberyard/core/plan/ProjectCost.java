package org.amberyard.core.plan;

import java.util.List;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.CostLedger;

/**
 * What the project of a plan costs: the new buses that replace others otherwise than the baseline does, ports, works, training
 * and tools, in the money that the study states, not discounted.
 *
 * @param capital what is bought
 * @param grant what programmes pay of it
 */
public record ProjectCost(double capital, double grant) {

    /** The whole project of a plan. */
    public static ProjectCost of(PlanResult plan, List<ReplacedBus> buses) {
        CostLedger ledger = plan.ledger();
        int yard = ledger.rows().size() - 1;
        double capital = buses.stream().mapToDouble(b -> of(plan, b).capital()).sum();
        double grant = buses.stream().mapToDouble(b -> of(plan, b).grant()).sum();
        for (int year = 0; year < ledger.years(); year++) {
            for (CostCategory category : CostCategory.values()) {
                capital += category.group() == CostCategory.Group.CAPITAL ? ledger.amount(yard, year, category) : 0;
                grant -= category.group() == CostCategory.Group.FUNDING ? ledger.amount(yard, year, category) : 0;
            }
        }
        return new ProjectCost(capital, grant);
    }

    /** One bus; a bus that only moved costs nothing. */
    public static ProjectCost of(PlanResult plan, ReplacedBus bus) {
        CostLedger ledger = plan.ledger();
        return bus.bought() ? new ProjectCost(ledger.amount(bus.place(), bus.year(), CostCategory.BUS_PURCHASE),
                -ledger.amount(bus.place(), bus.year(), CostCategory.FUNDING)) : new ProjectCost(0, 0);
    }
}
