package org.amberyard.core.plan;

import java.util.Comparator;
import java.util.List;
import org.amberyard.core.depot.ServiceInput;
import org.amberyard.core.depot.ServiceYear;
import org.amberyard.core.yard.YardYear;

/**
 * Load on the electric service of a plan by year, with the upgrades of the plan that are in service by then. The building's peak as it is
 * stated and the highest of its load through the day are two records of one thing, mostly rounded in different ways: the larger counts in
 * both measures of the load, so that they agree as long as there are no ports.
 */
public final class ServiceYears {
    private ServiceYears() {
    }

    static ServiceYear of(StudyInput study, PlanInput plan, PortFleet ports, YardYear yard, int year) {
        ServiceInput service = inYear(study.depot(), plan, year);
        double connectedKw = ports.connectedKw(year);
        double demandKva = service.kva(Math.max(yard.servicePeakKw(), service.buildingPeakKw()));
        return new ServiceYear(ports.count(year), connectedKw, yard.yardPeakKw(), Math.max(service.loadKva(connectedKw), demandKva),
                demandKva, service.transformerKva(), service.breakerContinuousKva());
    }

    /**
     * A larger service that is ordered.
     *
     * @param orderYear year of the order; below 0 for one before the base year
     * @param inServiceYear year from whose start it is in service
     * @param upgrade the service that it leaves behind
     */
    public record Ordered(int orderYear, int inServiceYear, DepotInput.Upgrade upgrade) {
    }

    /** Larger services of a plan that are not in service yet at the start of the base year, in the order in which they will be. */
    public static List<Ordered> toCome(DepotInput depot, PlanInput plan) {
        return plan.works().stream().flatMap(order -> depot.works().get(order.work()).upgrade()
                .map(u -> new Ordered(order.year(), u.inServiceYear(order.year()), u)).stream())
                .filter(o -> o.orderYear() >= 0 || o.inServiceYear() > 0).sorted(Comparator.comparingInt(Ordered::inServiceYear)).toList();
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
