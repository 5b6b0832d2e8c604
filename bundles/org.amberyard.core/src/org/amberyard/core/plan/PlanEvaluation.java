package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.depot.ServiceYear;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.money.CostLedger;
import org.amberyard.core.yard.YardComparison;
import org.amberyard.core.yard.YardMemory;
import org.amberyard.core.yard.YardYear;

/** Computes all results of one plan from the duty table. */
public final class PlanEvaluation {
    private PlanEvaluation() {
    }

    /** Results of a plan of a study, from the duty table, the fits with the ports on offer and the yards that are known. */
    static PlanResult of(StudyInput study, PlanInput plan, DutyTable duty, RouteFits onOffer, YardMemory memory) {
        PortFleet ports = new PortFleet(study.depot(), plan.ports());
        FleetHistory driven = FleetRollForward.of(study, plan, duty, ports);
        PlanYards planYards = new PlanYards(study, duty, ports);
        List<YardYear> yards = IntStream.range(0, study.years()).parallel().mapToObj(y -> memory.year(planYards.of(driven, y))).toList();
        FleetHistory fleet = driven.withMeterKwh(yards);
        int last = study.years() - 1;
        YardComparison compared = YardComparison.of(yards.get(last).input(), planYards.underOthers(driven, last), memory);
        List<ServiceYear> services = new ArrayList<>();
        List<AirYear> air = new ArrayList<>();
        for (int year = 0; year < study.years(); year++) {
            services.add(ServiceYears.of(study, plan, ports, yards.get(year), year));
            air.add(AirYear.of(study, fleet, yards.get(year), year));
        }
        List<UpkeepYear> upkeep = FleetUpkeep.of(study, duty, fleet);
        CostLedger ledger = ledger(study, plan, fleet, upkeep, ports, yards);
        return new PlanResult(plan, fleet, upkeep, ledger, air, yards, compared, services,
                RouteFitting.withPorts(study, duty, onOffer, ports), PlanMeasures.of(study, ledger, fleet, yards, air));
    }

    private static CostLedger ledger(StudyInput study, PlanInput plan, FleetHistory fleet,
            List<UpkeepYear> upkeep, PortFleet ports, List<YardYear> yards) {
        CostLedger.Builder ledger = new CostLedger.Builder(FleetCosts.rows(study), study.years(), study.money());
        FleetCosts fleetCosts = new FleetCosts(study, fleet, upkeep, ledger);
        FundingCosts funding = new FundingCosts(study, new BusValues(study), ledger);
        fleetCosts.add();
        for (FleetEvent event : fleet.events()) {
            if (event instanceof FleetEvent.Bought bought) {
                funding.addForBus(bought);
            }
        }
        new YardCosts(study, plan, ledger, funding).add(ports, yards);
        return ledger.build();
    }
}
