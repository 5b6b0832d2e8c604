package org.amberyard.core.plan;

import java.util.List;
import org.amberyard.core.depot.ServiceInput;
import org.amberyard.core.depot.ServiceYear;
import org.amberyard.core.yard.YardYear;

/** Load on the electric service of a plan by year, with the upgrades of the plan that are in service by then. */
public final class ServiceYears {
    private ServiceYears() {
    }

    static ServiceYear of(StudyInput study, PlanInput plan, PortFleet ports, YardYear yard, int year) {
        ServiceInput service = inYear(study.depot(), plan, year);
        double connectedKw = ports.connectedKw(year);
        return new ServiceYear(ports.count(year), connectedKw, yard.yardPeakKw(), service.loadKva(connectedKw),
                service.kva(yard.servicePeakKw()), service.transformerKva(), service.breakerContinuousKva());
    }

    /** The service in a year: that of the study, or the largest upgrade of the plan that is in service by then. */
    static ServiceInput inYear(DepotInput depot, PlanInput plan, int year) {
        return with(depot, plan.works(), year);
    }

    /** The service of today: that of the study, or the largest upgrade that was ordered before the base year and is in service. */
    public static ServiceInput today(DepotInput depot, PlanInput plan) {
        return with(depot, plan.works().stream().filter(order -> order.year() < 0).toList(), 0);
    }

    private static ServiceInput with(DepotInput depot, List<PlanInput.WorkOrder> orders, int year) {
        ServiceInput service = depot.service();
        for (PlanInput.WorkOrder order : orders) {
            DepotInput.SiteWork work = depot.works().get(order.work());
            if (work.upgrade().filter(u -> u.inServiceYear(order.year()) <= year).isPresent()) {
                DepotInput.Upgrade upgrade = work.upgrade().get();
                service = service.upgraded(Math.max(service.transformerKva(), upgrade.transformerKva()),
                        Math.max(service.breakerA(), upgrade.breakerA()));
            }
        }
        return service;
    }
}
