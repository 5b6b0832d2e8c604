package org.amberyard.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.amberyard.core.plan.FillRule;
import org.amberyard.core.plan.PlanFilling;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.depot.PortType;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.funding.Programme;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.plans.PlansFactory;
import org.amberyard.model.plans.PortPurchase;
import org.amberyard.model.plans.Replacement;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.VehicleType;

/** The steps of a rule, ready to be written into a plan. */
public final class PlanFill {

    /**
     * A bus to be replaced.
     *
     * @param bus its place
     * @param year fiscal year
     * @param type type bought
     * @param programmes programmes that pay
     */
    record NewStep(Bus bus, int year, VehicleType type, List<Programme> programmes) {
    }

    private final Study study;
    private final Plan plan;
    private final FillRule rule;
    private final PlanFilling filling;
    private final Optional<Programme> programme;
    private final List<NewStep> steps;

    private PlanFill(Study study, Plan plan, FillRule rule, PlanFilling filling, Optional<Programme> programme) {
        this.study = study;
        this.plan = plan;
        this.rule = rule;
        this.filling = filling;
        this.programme = programme;
        this.steps = newSteps();
    }

    /**
     * What a rule writes into a plan.
     *
     * @param result results of the study as it stands
     * @param programme programme that pays for the buses and ports that it pays for, up to its most buses
     */
    public static PlanFill of(Study study, Plan plan, StudyResult result, FillRule rule, Optional<Programme> programme) {
        return new PlanFill(study, plan, rule, PlanFilling.of(result,
                result.input().plans().get(study.getPlans().indexOf(plan)), rule), programme);
    }

    /** The programme that most steps of a plan name, the first of equals; empty when they name none. */
    public static Optional<Programme> usualPayer(Plan plan) {
        Map<Programme, Long> named = plan.getReplacements().stream().flatMap(r -> StepFunding.of(r).stream())
                .collect(Collectors.groupingBy(p -> p, LinkedHashMap::new, Collectors.counting()));
        return named.entrySet().stream().max(Comparator.comparingLong(Map.Entry<Programme, Long>::getValue)
                .thenComparing(e -> -List.copyOf(named.keySet()).indexOf(e.getKey()))).map(Map.Entry::getKey);
    }

    private List<NewStep> newSteps() {
        int left = programme.map(p -> p.getMaxBuses() - busesOf(p)).orElse(0);
        List<NewStep> all = new ArrayList<>();
        for (PlanFilling.Step step : filling.steps()) {
            VehicleType type = study.getVehicleTypes().get(step.type());
            int year = year(step.year());
            boolean paid = left > 0 && StepFunding.pays(programme.orElseThrow(), type, year);
            left -= paid ? 1 : 0;
            all.add(new NewStep(bus(step.place()), year, type, paid ? programme.stream().toList() : List.of()));
        }
        return List.copyOf(all);
    }

    /** Buses of a programme that the plan buys for places that are not filled. */
    private int busesOf(Programme payer) {
        Set<Bus> filled = filled();
        return (int) plan.getReplacements().stream()
                .filter(r -> !filled.contains(r.getBus()) && StepFunding.of(r).contains(payer)).count();
    }

    private Set<Bus> filled() {
        Set<Bus> buses = new HashSet<>();
        filling.steps().forEach(s -> buses.add(bus(s.place())));
        return buses;
    }

    Bus bus(int place) {
        return study.getBuses().get(place);
    }

    int year(int fromBase) {
        return study.getSettings().getBaseYear() + fromBase;
    }

    Optional<PortType> portType() {
        return rule.ports().port().stream().mapToObj(study.getDepot().getPortTypes()::get).findFirst();
    }

    Optional<Programme> programme() {
        return programme;
    }

    FillRule rule() {
        return rule;
    }

    PlanFilling filling() {
        return filling;
    }

    Plan plan() {
        return plan;
    }

    List<NewStep> steps() {
        return steps;
    }

    /** Steps of the plan that go because the rule fills their places. */
    List<Replacement> replaced() {
        Set<Bus> filled = filled();
        return plan.getReplacements().stream().filter(r -> filled.contains(r.getBus())).toList();
    }

    /** Port purchases of the plan that go because the rule buys ports from its first year on. */
    List<PortPurchase> replacedPorts() {
        return portType().isEmpty() ? List.of()
                : plan.getPortPurchases().stream().filter(p -> p.getYear() >= year(rule.firstYear())).toList();
    }

    /** True when there is nothing to write. */
    public boolean isEmpty() {
        return steps.isEmpty();
    }

    /**
     * Writes the steps in place of those that the plan has for their buses, and the ports in place of those that it buys from the rule's
     * first year on.
     */
    public void write() {
        plan.getReplacements().removeAll(replaced());
        steps.forEach(s -> BusSteps.of(plan, s.bus()).with(s.year(), s.type(), s.programmes()).write(plan));
        sellWhereTwoWouldArrive();
        portType().ifPresent(this::writePorts);
    }

    /** An old bus cannot move to a place that a new one takes in the same year; it is sold. */
    private void sellWhereTwoWouldArrive() {
        plan.getReplacements().stream().filter(r -> r.getCascadeTo() != null && steps.stream()
                .anyMatch(s -> s.bus() == r.getCascadeTo() && s.year() == r.getYear())).forEach(r -> r.setCascadeTo(null));
    }

    private void writePorts(PortType type) {
        plan.getPortPurchases().removeAll(replacedPorts());
        for (PlanFilling.Ports ports : filling.ports()) {
            PortPurchase purchase = PlansFactory.eINSTANCE.createPortPurchase();
            purchase.setYear(year(ports.year()));
            purchase.setPortType(type);
            purchase.setCount(ports.count());
            StepFunding.set(purchase, programme.filter(p -> StepFunding.paysPorts(p, purchase.getYear())).stream().toList());
            plan.getPortPurchases().add(purchase);
        }
    }
}
