package org.amberyard.core.plan;

import org.amberyard.core.depot.ServiceInput;
import org.amberyard.core.depot.ServiceYear;
import org.amberyard.core.yard.YardYear;

/** Load on the electric service of a plan by year, with the upgrades of the plan that are in service by then. */
final class ServiceYears {
    private ServiceYears() {
    }

    static ServiceYear of(StudyInput study, PlanInput plan, PortFleet ports, YardYear yard, int year) {
        ServiceInput service = inYear(study.depot(), plan, year);
        double connectedKw = ports.connectedKw(year);
        return new ServiceYear(ports.count(year), connectedKw, yard.yardPeakKw(), service.loadKva(connectedKw),
                service.kva(yard.servicePeakKw()), service.transformerKva(), service.breakerContinuousKva());
    }

    /** The service in a year: that of today, or the largest upgrade of the plan that is in service by then. */
    static ServiceInput inYear(DepotInput depot, PlanInput plan, int year) {
        ServiceInput service = depot.service();
        for (PlanInput.WorkOrder order : plan.works()) {
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
