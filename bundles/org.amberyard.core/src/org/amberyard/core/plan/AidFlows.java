package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.amberyard.core.funding.AwardLedger;
import org.amberyard.core.funding.FundedLine;
import org.amberyard.core.funding.FundingFlow;
import org.amberyard.core.funding.OperatingAid;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.CostLedger;
import org.amberyard.core.money.NominalCosts;
import org.amberyard.core.why.Derivation;
import org.amberyard.core.why.InputRef;

/**
 * Operating aid of a plan, which every plan gets, the baseline too. Approved are energy, upkeep, insurance and fees, less what
 * low-carbon credits earn, and the depreciation of own money spent on buses that the plan buys. Depreciation of buses of today is
 * not known and left out, as is aid for the years before the study, which is the same for all plans.
 */
final class AidFlows {
    private final StudyInput study;
    private final FleetHistory fleet;
    private final NominalCosts costs;
    private final List<FundingFlow> earned;
    private final Map<String, FundedLine> buses = new HashMap<>();

    AidFlows(StudyInput study, AwardLedger awards, FleetHistory fleet, CostLedger costs, List<FundingFlow> earned) {
        this.study = study;
        this.fleet = fleet;
        this.costs = new NominalCosts(costs);
        this.earned = earned;
        awards.lines().forEach(l -> l.purchase().bus().ifPresent(b -> buses.put(b.unit(), l)));
    }

    List<FundingFlow> all() {
        List<FundingFlow> flows = new ArrayList<>();
        for (OperatingAid aid : study.funding().aids()) {
            for (int year = 0; year < study.years(); year++) {
                if (aid.covers(year)) {
                    add(aid, year, flows);
                }
            }
        }
        return flows;
    }

    private void add(OperatingAid aid, int year, List<FundingFlow> flows) {
        double[] depreciation = depreciation(aid, year);
        for (int row = 0; row < costs.ledger().rows().size(); row++) {
            Derivation amount = Derivation.sum("aid of " + aid.name(), Derivation.MONEY, List.of(
                    share("operating cost", operatingCost(row, year), "energy, upkeep and fees less what credits earn",
                            aid.operatingShare(), new InputRef("OperatingAid", aid.name(), "operatingShare")),
                    share("depreciation", depreciation[row], "own money paid for the bus over the years of depreciation",
                            aid.depreciationShare(), new InputRef("OperatingAid", aid.name(), "depreciationShare"))));
            if (amount.value() != 0) {
                flows.add(new FundingFlow(FundingFlow.Kind.AID, aid.name(), row, year + aid.lagYears(), amount));
            }
        }
    }

    private static Derivation share(String name, double cost, String rule, double share, InputRef input) {
        return Derivation.product("aid for " + name, Derivation.MONEY, Derivation.input("share of " + name, share, "", input),
                Derivation.of(name + " of the year", cost, Derivation.MONEY, rule));
    }

    /** In money of the year. */
    private double operatingCost(int row, int year) {
        double sum = 0;
        for (CostCategory category : CostCategory.values()) {
            if (category.group() == CostCategory.Group.ENERGY || category.group() == CostCategory.Group.UPKEEP) {
                sum += costs.amount(row, year, category);
            }
        }
        return sum - earned.stream().filter(f -> f.row() == row && f.year() == year).mapToDouble(FundingFlow::amount).sum();
    }

    private double[] depreciation(OperatingAid aid, int year) {
        double[] byRow = new double[costs.ledger().rows().size()];
        for (VehicleYear record : fleet.inYear(year)) {
            FundedLine line = buses.get(record.vehicle().unit());
            if (line != null) {
                byRow[record.place()] += aid.depreciation(line.own(), line.purchase().year(), year);
            }
        }
        return byRow;
    }
}
