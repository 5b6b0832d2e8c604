package org.amberyard.core.plan;

import java.util.List;
import org.amberyard.core.air.AirInput;
import org.amberyard.core.duty.DutyInput;
import org.amberyard.core.funding.FundingInput;
import org.amberyard.core.money.MoneyRules;

/**
 * Everything that decides a study's results. Lists refer to each other by place.
 *
 * @param name name of the study
 * @param currency currency code
 * @param baseYear calendar number of the base year
 * @param years years studied
 * @param money how amounts are stated and discounted
 * @param duty climate, routes and vehicle physics
 * @param types vehicle types, in the order of the duty's vehicles
 * @param buses present fleet
 * @param depot electric side
 * @param prices prices and their paths
 * @param funding programmes, credits and aids
 * @param air emission factors and what harm costs
 * @param rules fleet rules
 * @param plans plans
 * @param baseline place of the plan that the others are compared with
 * @param trips trips of a year beside the routes
 */
public record StudyInput(String name, String currency, int baseYear, int years, MoneyRules money, DutyInput duty,
        List<VehicleTypeInput> types, List<BusInput> buses, DepotInput depot, PriceDeck prices,
        FundingInput funding, AirInput air, FleetRules rules, List<PlanInput> plans, int baseline,
        List<TripInput> trips) {

    public StudyInput {
        types = List.copyOf(types);
        buses = List.copyOf(buses);
        plans = List.copyOf(plans);
        trips = List.copyOf(trips);
    }

    /** The same at other prices. */
    StudyInput at(PriceDeck others) {
        return new StudyInput(name, currency, baseYear, years, money, duty, types, buses, depot, others, funding, air, rules,
                plans, baseline, trips);
    }

    /** The same discounted and stated otherwise. */
    StudyInput at(MoneyRules others) {
        return new StudyInput(name, currency, baseYear, years, others, duty, types, buses, depot, prices, funding, air, rules,
                plans, baseline, trips);
    }

    /** The same with another fleet and other funding, without trips. */
    StudyInput with(List<BusInput> fleet, FundingInput others) {
        return new StudyInput(name, currency, baseYear, years, money, duty, types, fleet, depot, prices, others, air, rules, plans,
                baseline, List.of());
    }

    /** True when buses at the yard between runs are plugged in. */
    public boolean middayCharging() {
        return duty.habit().midday();
    }
}
