package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.core.depot.ServiceYear;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.money.CostLedger;

/** Computes all results of one plan from the duty table. */
public final class PlanEvaluation {
    private PlanEvaluation() {
    }

    /** Results of a plan of a study, from the duty table and the fits with the ports on offer. */
    public static PlanResult of(StudyInput study, PlanInput plan, DutyTable duty, RouteFits onOffer) {
        PortFleet ports = new PortFleet(study.depot(), plan.ports());
        FleetHistory fleet = FleetRollForward.of(study, plan, duty, ports);
        ChargingDays charging = new ChargingDays(study, duty);
        List<DemandYear> demands = new ArrayList<>();
        List<ServiceYear> services = new ArrayList<>();
        List<AirYear> air = new ArrayList<>();
        for (int year = 0; year < study.years(); year++) {
            DemandYear demand = DemandYear.of(study, charging, fleet, ports, year);
            demands.add(demand);
            services.add(demand.service(study.depot(), ports, year));
            air.add(AirYear.of(study, fleet, ports, year));
        }
        List<UpkeepYear> upkeep = FleetUpkeep.of(study, duty, fleet);
        CostLedger ledger = ledger(study, plan, fleet, upkeep, ports, demands);
        return new PlanResult(plan, fleet, upkeep, ledger, air, demands, services,
                RouteFitting.withPorts(study, duty, onOffer, ports), PlanMeasures.of(study, ledger, fleet, ports, air));
    }

    private static CostLedger ledger(StudyInput study, PlanInput plan, FleetHistory fleet,
            List<UpkeepYear> upkeep, PortFleet ports, List<DemandYear> demands) {
        CostLedger.Builder ledger = new CostLedger.Builder(FleetCosts.rows(study), study.years(), study.money());
        FleetCosts fleetCosts = new FleetCosts(study, fleet, upkeep, ledger);
        FundingCosts funding = new FundingCosts(study, new BusValues(study), ledger);
        fleetCosts.add();
        for (FleetEvent event : fleet.events()) {
            if (event instanceof FleetEvent.Bought bought) {
                funding.addForBus(bought);
            }
        }
        new YardCosts(study, plan, ledger, funding).add(ports, fleet, demands);
        return ledger.build();
    }
}
