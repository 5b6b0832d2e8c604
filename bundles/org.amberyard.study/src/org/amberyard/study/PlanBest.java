package org.amberyard.study;

import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.amberyard.core.plan.BestPlan;
import org.amberyard.core.plan.BestPlanAim;
import org.amberyard.core.plan.PlanInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.progress.Progress;
import org.amberyard.model.depot.PortType;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.funding.Programme;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.plans.PlansFactory;
import org.amberyard.model.plans.PortPurchase;
import org.amberyard.model.plans.Replacement;
import org.amberyard.model.study.Study;

/** The cheapest plan found for a study, ready to be written into one of its plans. */
public final class PlanBest {
    private final Study study;
    private final Plan plan;
    private final BestPlanAim aim;
    private final BestPlan best;

    /** @param best the plan of {@link #search} */
    public PlanBest(Study study, Plan plan, BestPlanAim aim, BestPlan best) {
        this.study = study;
        this.plan = plan;
        this.aim = aim;
        this.best = best;
    }

    /**
     * Looks for the cheapest plan. It reads results alone, so that it may run beside an open study.
     *
     * @param result results of the study as it stands
     * @param plan place of the plan whose works, one-off costs, financing and cap hold
     * @throws IllegalArgumentException when the plan has no bus to decide on
     */
    public static BestPlan search(StudyResult result, int plan, BestPlanAim aim, Progress progress) {
        return BestPlan.of(result, plan, aim, progress);
    }

    /** The port type that a plan buys most of, the first of equals; the study's first where it buys none. */
    public static PortType usualPort(Study study, Plan plan) {
        List<PortType> types = study.getDepot().getPortTypes();
        Map<PortType, Integer> bought = plan.getPortPurchases().stream().filter(p -> p.getPortType() != null)
                .collect(Collectors.toMap(PortPurchase::getPortType, PortPurchase::getCount, Integer::sum));
        return types.stream().max(Comparator.comparingInt((PortType t) -> bought.getOrDefault(t, 0))
                .thenComparing(Comparator.comparingInt((PortType t) -> types.indexOf(t)).reversed())).orElseThrow();
    }

    /** The programmes that the steps and ports of a plan name. */
    public static Set<Programme> named(Plan plan) {
        return Stream.concat(plan.getReplacements().stream().flatMap(r -> StepFunding.of(r).stream()),
                plan.getPortPurchases().stream().flatMap(p -> StepFunding.of(p).stream()))
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    Study study() {
        return study;
    }

    Plan plan() {
        return plan;
    }

    BestPlanAim aim() {
        return aim;
    }

    BestPlan best() {
        return best;
    }

    int year(int fromBase) {
        return study.getSettings().getBaseYear() + fromBase;
    }

    Bus bus(int place) {
        return study.getBuses().get(place);
    }

    Programme programme(int place) {
        return study.getProgrammes().get(place);
    }

    /** Writes the steps in place of those that the plan has for the buses decided on, and the ports in place of its own from the first year. */
    public void write() {
        Set<Bus> decided = new HashSet<>(best.decided().stream().map(this::bus).toList());
        plan.getReplacements().removeIf(r -> decided.contains(r.getBus()));
        best.steps().stream().map(this::replacement).forEach(plan.getReplacements()::add);
        plan.getPortPurchases().removeIf(p -> p.getYear() >= year(aim.firstYear()));
        best.ports().stream().filter(p -> p.year() >= aim.firstYear()).map(this::purchase).forEach(plan.getPortPurchases()::add);
    }

    private Replacement replacement(PlanInput.Replacement step) {
        Replacement replacement = PlansFactory.eINSTANCE.createReplacement();
        replacement.setYear(year(step.year()));
        replacement.setBus(bus(step.place()));
        replacement.setNewType(study.getVehicleTypes().get(step.newType().getAsInt()));
        StepFunding.set(replacement, programmes(step.programmes()));
        return replacement;
    }

    private PortPurchase purchase(PlanInput.PortPurchase ports) {
        PortPurchase purchase = PlansFactory.eINSTANCE.createPortPurchase();
        purchase.setYear(year(ports.year()));
        purchase.setPortType(study.getDepot().getPortTypes().get(ports.port()));
        purchase.setCount(ports.count());
        StepFunding.set(purchase, programmes(ports.programmes()));
        return purchase;
    }

    private List<Programme> programmes(List<Integer> places) {
        Function<Integer, Programme> of = this::programme;
        return places.stream().map(of).toList();
    }
}
