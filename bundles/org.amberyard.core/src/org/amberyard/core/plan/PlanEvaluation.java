package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.depot.ServiceYear;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.yard.YardComparison;
import org.amberyard.core.yard.YardMemory;
import org.amberyard.core.yard.YardYear;

/** Computes all results of one plan from the duty table. */
public final class PlanEvaluation {
    private PlanEvaluation() {
    }

    /** Results of a plan of a study, from the duty table, the fits with the ports on offer and the yards that are known. */
    static PlanResult of(StudyInput study, PlanInput plan, DutyTable duty, StudyFigures figures, RouteFits onOffer,
            YardMemory memory) {
        PortFleet ports = new PortFleet(study.depot(), plan.ports());
        FleetHistory driven = FleetRollForward.of(study, plan, duty, ports, figures);
        PlanYards planYards = new PlanYards(study, duty, ports);
        List<YardYear> yards = IntStream.range(0, study.years()).parallel()
                .mapToObj(y -> memory.year(planYards.of(driven, y))).toList();
        FleetHistory fleet = driven.withMeterKwh(yards).withScrapped(PlanAwards.scrapped(study,
                PlanAwards.of(new PriceBook(study), plan, new PurchaseLines(study, plan, driven))));
        int last = study.years() - 1;
        YardComparison compared = new YardComparison(yards.stream().map(YardYear::input).toList(),
                planYards.underOthers(driven, last), PortOffers.of(study), ports.units(last), memory);
        List<UpkeepYear> upkeep = FleetUpkeep.of(study, fleet, figures);
        PlanCosts costs = PlanCosts.of(study, plan, new PlanCourse(fleet, upkeep, ports, yards));
        List<AirYear> air = air(study, duty, fleet, yards);
        return new PlanResult(plan, fleet, upkeep, costs, air, yards, compared, service(study, plan, ports, yards),
                RouteFitting.withPorts(study, duty, onOffer, ports), PlanFinance.of(study, plan, fleet, costs),
                PlanMeasures.of(study, costs.ledger(), fleet, yards, air));
    }

    private static List<AirYear> air(StudyInput study, DutyTable duty, FleetHistory fleet, List<YardYear> yards) {
        List<AirYear> air = new ArrayList<>();
        BusAir buses = new BusAir(study, duty);
        for (int year = 0; year < study.years(); year++) {
            air.add(AirYear.of(buses, study.air().factors(), fleet, yards.get(year), year));
        }
        return air;
    }

    private static List<ServiceYear> service(StudyInput study, PlanInput plan, PortFleet ports, List<YardYear> yards) {
        List<ServiceYear> services = new ArrayList<>();
        for (int year = 0; year < study.years(); year++) {
            services.add(ServiceYears.of(study, plan, ports, yards.get(year), year));
        }
        return services;
    }
}
