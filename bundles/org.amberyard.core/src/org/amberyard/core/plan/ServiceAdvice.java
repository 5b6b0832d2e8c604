package org.amberyard.core.plan;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.amberyard.core.depot.ServiceYear;
import org.amberyard.core.progress.Progress;

/**
 * When a plan outgrows the electric service, and what would do about it, judged in the year in which all ports at full power
 * exceed it most. Costs are per year in base-date money, capital by its recovery over its life. The utility, the local code and a
 * licensed electrician decide what is allowed.
 *
 * @param connectedFrom first year in which all ports at full power exceed the service
 * @param plannedFrom first year in which even charging as planned does
 * @param year year that the remedies are judged in
 * @param remedies what would do, cheapest first
 */
public record ServiceAdvice(OptionalInt connectedFrom, OptionalInt plannedFrom, int year, List<Remedy> remedies) {

    /** Kinds of remedies. */
    public enum Kind {
        /** Charging as planned, under a listed load-management system. */
        MANAGED_CHARGING,
        /** Charging at least cost that keeps to the service. */
        WITHIN_THE_SERVICE,
        /** Fewer or smaller ports. */
        OTHER_PORTS,
        /** A battery beside the building. */
        BATTERY,
        /** A larger service. */
        UPGRADE
    }

    /**
     * Something that keeps the load within the service.
     *
     * @param kind what it is
     * @param words what exactly
     * @param loadKva load that the service then sees, kVA
     * @param costPerYear what it costs beyond the plan as it is, money per year; negative when it saves
     * @param orderYear year in which it must be ordered, counted from the base year; empty when any time will do
     */
    public record Remedy(Kind kind, String words, double loadKva, double costPerYear, OptionalInt orderYear) {
    }

    public ServiceAdvice {
        remedies = List.copyOf(remedies);
    }

    /**
     * Advice for a plan; without remedies when it stays within the service at full power.
     *
     * @param progress hears of the search for other ports
     */
    public static ServiceAdvice of(StudyInput study, PlanResult plan, Progress progress) {
        OptionalInt connected = first(plan, ServiceYear::connectedExceeds);
        int year = IntStream.range(0, study.years()).boxed()
                .max(Comparator.comparingDouble((Integer y) -> overload(plan.service().get(y)))
                        .thenComparing(Comparator.<Integer>reverseOrder()))
                .orElseThrow();
        List<Remedy> remedies = connected.isEmpty() ? List.of() : new ServiceRemedies(study, plan, year, connected.getAsInt(), progress).all();
        return new ServiceAdvice(connected, first(plan, ServiceYear::demandExceeds), year, remedies);
    }

    private static double overload(ServiceYear service) {
        return service.connectedKva() / service.limitKva();
    }

    private static OptionalInt first(PlanResult plan, Predicate<ServiceYear> exceeds) {
        return IntStream.range(0, plan.service().size()).filter(y -> exceeds.test(plan.service().get(y))).findFirst();
    }
}
