package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.amberyard.core.depot.ServiceYear;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.yard.YardComparison;
import org.amberyard.core.yard.YardMemory;
import org.amberyard.core.yard.YardYear;

/** Computes all results of one plan from the duty table. */
public final class PlanEvaluation {
    private PlanEvaluation() {
    }

    /**
     * Results of a plan of a study, from the duty table, the fits with the ports on offer and the yards that are known.
     *
     * @throws CancellationException when the progress throws it
     */
    static PlanResult of(StudyInput study, PlanInput plan, DutyTable duty, StudyFigures figures, RouteFits onOffer,
            YardMemory memory, Progress progress) {
        PortFleet ports = new PortFleet(study.depot(), plan.ports());
        PlanYards planYards = new PlanYards(study, duty, ports);
        PlanCourse course = PlanCourse.of(study, plan, duty, figures, ports, driven -> planYards.all(driven, memory, progress));
        FleetHistory fleet = course.fleet();
        List<YardYear> yards = course.yards();
        int last = study.years() - 1;
        YardComparison compared = new YardComparison(yards.stream().map(YardYear::input).toList(),
                planYards.underOthers(fleet, last), PortOffers.of(study), ports.units(last), memory);
        PlanCosts costs = PlanCosts.of(study, plan, course);
        List<AirYear> air = AirYear.all(study, duty, fleet, yards);
        return new PlanResult(plan, fleet, course.upkeep(), costs, air, yards, compared, service(study, plan, ports, yards),
                RouteFitting.withPorts(study, duty, onOffer, ports), PlanFinance.of(study, plan, fleet, costs),
                PlanMeasures.of(study, costs.ledger(), fleet, yards, air));
    }

    /** Present cost of a plan of a study and nothing else. */
    static double presentCost(StudyInput study, PlanInput plan, DutyTable duty, StudyFigures figures, YardMemory memory,
            KnownUpkeep upkeep) {
        return PlanCosts.of(study, plan, PlanCourse.of(study, plan, duty, figures, memory,
                fleet -> upkeep.of(study, fleet, figures))).ledger().presentValue();
    }

    private static List<ServiceYear> service(StudyInput study, PlanInput plan, PortFleet ports, List<YardYear> yards) {
        List<ServiceYear> services = new ArrayList<>();
        for (int year = 0; year < study.years(); year++) {
            services.add(ServiceYears.of(study, plan, ports, yards.get(year), year));
        }
        return services;
    }
}
