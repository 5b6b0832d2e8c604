package org.amberyard.core.plan;

import java.util.List;
import org.amberyard.core.depot.ServiceYear;
import org.amberyard.core.money.CostLedger;
import org.amberyard.core.upkeep.FailureSpread;
import org.amberyard.core.upkeep.ShopCalendar;
import org.amberyard.core.yard.YardComparison;
import org.amberyard.core.yard.YardYear;

/**
 * All results of one plan.
 *
 * @param plan the plan
 * @param fleet the fleet over the years
 * @param upkeep upkeep of each bus-year, in the order of the fleet's years
 * @param costs what it costs
 * @param air what goes into the air by year
 * @param yards the yard by year: charging, peaks and bills
 * @param yardComparison the yard under other charging policies and tariffs, and with other ports
 * @param service load on the electric service by year
 * @param fits whether electric types can do the routes with the ports of the plan
 * @param finance debts, taxes and the budget of each year
 * @param measures single figures
 */
public record PlanResult(PlanInput plan, FleetHistory fleet, List<UpkeepYear> upkeep, PlanCosts costs, List<AirYear> air,
        List<YardYear> yards, YardComparison yardComparison, List<ServiceYear> service, RouteFits fits, PlanFinance finance,
        PlanMeasures measures) {

    public PlanResult {
        upkeep = List.copyOf(upkeep);
        air = List.copyOf(air);
        yards = List.copyOf(yards);
        service = List.copyOf(service);
    }

    /** Costs by place, year and category. */
    public CostLedger ledger() {
        return costs.ledger();
    }

    /** What programmes, credits and aids bring. */
    public PlanFunding funding() {
        return costs.funding();
    }

    /** The same at the prices of a study that differs in prices and payment alone. */
    PlanResult at(StudyInput study, PlanInput paid, FleetHistory decided) {
        PlanCosts newCosts = costs.at(study);
        return new PlanResult(paid, decided, upkeep, newCosts, air, yards, yardComparison.with(PortOffers.of(study)), service, fits,
                PlanFinance.of(study, paid, decided, newCosts),
                measures.at(study, newCosts.ledger()));
    }

    /** Work of the shop on the whole fleet in a year. */
    public ShopCalendar shop(int year) {
        return new ShopCalendar(upkeep.stream().filter(u -> u.record().year() == year)
                .flatMap(u -> u.calendar().events().stream()).toList());
    }

    /** What failures of the whole fleet come to in a year, and how far that may miss. */
    public FailureSpread failures(int year) {
        return upkeep.stream().filter(u -> u.record().year() == year).map(UpkeepYear::failures)
                .reduce(FailureSpread.NONE, FailureSpread::plus);
    }

    /** Present cost after financing and taxes: that of cash purchases and what these add. */
    public double presentCostAfterFinancing() {
        return measures.presentCost() + finance.ledger().presentValue();
    }

    /** Name of the plan. */
    public String name() {
        return plan.name();
    }
}
