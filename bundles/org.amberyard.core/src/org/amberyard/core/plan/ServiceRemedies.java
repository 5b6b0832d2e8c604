package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.charging.PortMix;
import org.amberyard.core.depot.PeakShaving;
import org.amberyard.core.depot.ServiceInput;
import org.amberyard.core.depot.ServiceYear;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.yard.MonthLoad;
import org.amberyard.core.yard.PortChoice;
import org.amberyard.core.yard.PortCurve;
import org.amberyard.core.yard.YardDetail;
import org.amberyard.core.yard.YardInput;
import org.amberyard.core.yard.YardYear;

/**
 * Looks for what keeps a plan within the electric service.
 *
 * @param study the study
 * @param plan the plan
 * @param year year in which remedies are judged
 * @param breachYear first year in which all ports at full power exceed the service
 * @param progress hears of the search for other ports
 */
record ServiceRemedies(StudyInput study, PlanResult plan, int year, int breachYear, Progress progress) {
    /** All that would do, cheapest first. */
    List<ServiceAdvice.Remedy> all() {
        List<ServiceAdvice.Remedy> found = new ArrayList<>();
        asPlanned().ifPresent(found::add);
        withinTheService().ifPresent(found::add);
        otherPorts().ifPresent(found::add);
        battery().ifPresent(found::add);
        upgrades().forEach(found::add);
        found.sort(Comparator.comparingDouble(ServiceAdvice.Remedy::costPerYear));
        return found;
    }

    private ServiceInput service() {
        return ServiceYears.inYear(study.depot(), plan.plan(), year);
    }

    private RemedyPrices prices() {
        return new RemedyPrices(study);
    }

    private YardYear yard() {
        return plan.yards().get(year);
    }

    private YardInput under(ChargePolicy policy) {
        return yard().input().with(yard().input().rule().with(policy));
    }

    private Optional<ServiceAdvice.Remedy> asPlanned() {
        ServiceYear load = plan.service().get(year);
        boolean managed = yard().input().rule().managed();
        return managed && plan.service().stream().noneMatch(ServiceYear::demandExceeds)
                ? Optional.of(new ServiceAdvice.Remedy(ServiceAdvice.Kind.MANAGED_CHARGING,
                        "Charging as planned under a listed load-management system", load.demandKva(), 0, OptionalInt.empty()))
                : Optional.empty();
    }

    private Optional<ServiceAdvice.Remedy> withinTheService() {
        double limitKw = limitKva() * service().powerFactor() - service().buildingPeakKw();
        if (!(limitKw > 0)) {
            return Optional.empty();
        }
        boolean shared = yard().input().metering().shared();
        YardYear kept = YardYear.of(under(ChargePolicy.LEAST_COST)
                .within(shared ? limitKva() * service().powerFactor() : limitKw));
        double loadKva = service().kva(kept.servicePeakKw());
        boolean served = kept.months().stream().allMatch(m -> m.shortfalls().isEmpty());
        return served && loadKva <= limitKva() ? Optional.of(new ServiceAdvice.Remedy(ServiceAdvice.Kind.WITHIN_THE_SERVICE,
                "Charging at least cost that keeps to the service", loadKva, prices().bill(kept) - prices().bill(yard()),
                OptionalInt.empty())) : Optional.empty();
    }

    private double limitKva() {
        return plan.service().get(year).limitKva();
    }

    /** The cheapest ports of the policy in use that the service carries at full power; a plan without ports has no others. */
    private Optional<ServiceAdvice.Remedy> otherPorts() {
        return plan.yardComparison().ports(progress).stream()
                .filter(c -> c.policy() == yard().input().rule().policy()).findFirst().flatMap(this::otherPorts);
    }

    private Optional<ServiceAdvice.Remedy> otherPorts(PortCurve curve) {
        return curve.bought().flatMap(today -> curve.byNumber().stream()
                .filter(choice -> connectedKva(curve, choice) <= limitKva()).min(Comparator.comparingDouble(prices()::ports))
                .map(choice -> new ServiceAdvice.Remedy(ServiceAdvice.Kind.OTHER_PORTS, words(curve, choice.mix()),
                        connectedKva(curve, choice), prices().ports(choice) - prices().ports(today), OptionalInt.empty())));
    }

    private double connectedKva(PortCurve curve, PortChoice choice) {
        return service().loadKva(curve.offer().connectedKw(choice.mix()));
    }

    private static String words(PortCurve curve, PortMix mix) {
        return "Other ports: " + curve.offer().words(mix) + (mix.swaps() > 0 ? ", with plugs moved" : "");
    }

    /** A battery that keeps every day of the year within the service when all buses charge at once. */
    private Optional<ServiceAdvice.Remedy> battery() {
        YardDetail atOnce = YardDetail.of(under(ChargePolicy.AT_ONCE));
        double limitKw = limitKva() * service().powerFactor();
        double kwh = 0;
        double kw = 0;
        for (MonthLoad month : atOnce.loads()) {
            for (double[] loadKw : month.serviceKw()) {
                Optional<PeakShaving> needed = PeakShaving.of(loadKw, atOnce.year().input().stepMin() / 60.0, limitKw);
                if (needed.isEmpty()) {
                    return Optional.empty();
                }
                kwh = Math.max(kwh, needed.get().kwh());
                kw = Math.max(kw, needed.get().kw());
            }
        }
        double perYear = prices().battery(Math.max(kwh, kw / study.depot().charging().battery().kwPerKwh()));
        double billed = prices().bill(atOnce.year()) - prices().bill(yard());
        return kw > 0 ? Optional.of(new ServiceAdvice.Remedy(ServiceAdvice.Kind.BATTERY, String.format(Locale.ROOT,
                "Battery of %.0f kWh and %.0f kW beside the building, buses charged at once", kwh, kw), limitKva(),
                perYear + billed, OptionalInt.empty())) : Optional.empty();
    }

    private List<ServiceAdvice.Remedy> upgrades() {
        return study.depot().works().stream().filter(w -> w.upgrade().isPresent()).filter(this::enough).map(this::upgrade)
                .toList();
    }

    private ServiceInput after(DepotInput.SiteWork work) {
        return service().upgraded(work.upgrade().orElseThrow().transformerKva(), work.upgrade().orElseThrow().breakerA());
    }

    private boolean enough(DepotInput.SiteWork work) {
        ServiceInput larger = after(work);
        return plan.service().get(year).connectedKva() <= Math.min(larger.transformerKva(), larger.breakerContinuousKva());
    }

    private ServiceAdvice.Remedy upgrade(DepotInput.SiteWork work) {
        return new ServiceAdvice.Remedy(ServiceAdvice.Kind.UPGRADE, work.name(), plan.service().get(year).connectedKva(),
                prices().work(work), OptionalInt.of(work.upgrade().orElseThrow().orderYear(breachYear)));
    }
}
