package org.amberyard.core.plan;

import java.util.List;
import java.util.function.Function;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.yard.YardMemory;
import org.amberyard.core.yard.YardYear;

/**
 * What happens in a plan, whatever it costs.
 *
 * @param fleet the fleet over the years
 * @param upkeep upkeep of each bus-year at base-date prices, in the order of the fleet's years
 * @param ports its ports over the years
 * @param yards the yard by year
 */
record PlanCourse(FleetHistory fleet, List<UpkeepYear> upkeep, PortFleet ports, List<YardYear> yards) {

    PlanCourse {
        upkeep = List.copyOf(upkeep);
        yards = List.copyOf(yards);
    }

    /** What happens in a plan of a study, from the duty table and the yards that are known. */
    static PlanCourse of(StudyInput study, PlanInput plan, DutyTable duty, StudyFigures figures, YardMemory memory) {
        return of(study, plan, duty, figures, memory, fleet -> FleetUpkeep.of(study, fleet, figures));
    }

    /** The same with upkeep of one's own. */
    static PlanCourse of(StudyInput study, PlanInput plan, DutyTable duty, StudyFigures figures, YardMemory memory,
            Function<FleetHistory, List<UpkeepYear>> upkeep) {
        PortFleet ports = new PortFleet(study.depot(), plan.ports());
        PlanYards planYards = new PlanYards(study, duty, ports);
        return of(study, plan, duty, figures, ports, driven -> planYards.all(driven, memory, Progress.NONE), upkeep);
    }

    /**
     * The same with yards of one's own.
     *
     * @param ports the plan's ports over the years
     * @param yards the yard by year for a fleet that has been driven
     */
    static PlanCourse of(StudyInput study, PlanInput plan, DutyTable duty, StudyFigures figures, PortFleet ports,
            Function<FleetHistory, List<YardYear>> yards) {
        return of(study, plan, duty, figures, ports, yards, fleet -> FleetUpkeep.of(study, fleet, figures));
    }

    private static PlanCourse of(StudyInput study, PlanInput plan, DutyTable duty, StudyFigures figures, PortFleet ports,
            Function<FleetHistory, List<YardYear>> yards, Function<FleetHistory, List<UpkeepYear>> upkeep) {
        FleetHistory driven = FleetRollForward.of(study, plan, duty, ports, figures);
        List<YardYear> charged = yards.apply(driven);
        FleetHistory fleet = driven.withMeterKwh(charged).withScrapped(PlanAwards.scrapped(study,
                PlanAwards.of(new PriceBook(study), plan, new PurchaseLines(study, plan, driven))));
        return new PlanCourse(fleet, upkeep.apply(fleet), ports, charged);
    }
}
