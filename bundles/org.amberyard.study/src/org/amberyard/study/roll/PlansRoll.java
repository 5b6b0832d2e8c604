package org.amberyard.study.roll;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.amberyard.model.common.Sourced;
import org.amberyard.model.depot.PortType;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.meta.Phrase;
import org.amberyard.model.plans.OneOffCost;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.plans.PlansPackage.Literals;
import org.amberyard.model.plans.PortPurchase;
import org.amberyard.model.plans.Replacement;
import org.amberyard.model.plans.WorkOrder;
import org.amberyard.model.study.Study;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * Steps of the years that are over. What the plan that was carried out did is there: buses in the fleet, ports and works with the
 * year in which they were bought, in every plan. What another plan had for these years and nobody did falls in the new base year.
 */
final class PlansRoll {
    private static final String DONE = "done in the years that are over";
    private static final String STANDS = "it stands, by the plan that was carried out";
    private static final String LATE = "not done in the years that are over";

    private final Study study;
    private final RollLog log;
    private final Plan carriedOut;
    private final Set<Bus> changed;
    private final int oldBase;
    private final int newBase;

    /** @param changed buses whose place has another bus than before, or none */
    PlansRoll(Study study, RollLog log, Plan carriedOut, Set<Bus> changed, int oldBase, int newBase) {
        this.study = study;
        this.log = log;
        this.carriedOut = carriedOut;
        this.changed = changed;
        this.oldBase = oldBase;
        this.newBase = newBase;
    }

    void write() {
        for (Plan plan : study.getPlans()) {
            List<Replacement> obsolete = plan == carriedOut ? List.of() : obsolete(plan);
            over(plan.getReplacements(), Literals.REPLACEMENT__YEAR).forEach(step -> replaced(plan, step));
            obsolete.forEach(step -> remove(plan.getReplacements(), step, "the bus that it replaces has gone by the plan that was carried out"));
            if (plan != carriedOut) {
                writePorts(plan);
                writeWorks(plan);
            }
        }
        study.getPlans().stream().filter(plan -> plan != carriedOut).forEach(this::writeOneOffs);
        over(carriedOut.getOneOffCosts(), Literals.ONE_OFF_COST__YEAR).forEach(o -> remove(carriedOut.getOneOffCosts(), o, DONE));
        for (Plan plan : study.getPlans()) {
            plan.getPortPurchases().stream().filter(p -> p.getYear() < newBase)
                    .forEach(p -> log.set(p, Literals.PORT_PURCHASE__PROGRAMMES, List.of(), STANDS));
            plan.getWorkOrders().stream().filter(w -> w.getYear() < newBase)
                    .forEach(w -> log.set(w, Literals.WORK_ORDER__PROGRAMMES, List.of(), STANDS));
        }
        over(carriedOut.getPortPurchases(), Literals.PORT_PURCHASE__YEAR).forEach(this::stands);
        over(carriedOut.getWorkOrders(), Literals.WORK_ORDER__YEAR).forEach(this::stands);
    }

    private void stands(Sourced step) {
        log.remark(Phrase.start(ElementNames.withKind(step)) + " stands: it is not "
                + "paid for again, and is renewed at the end of its life.");
    }

    /** Steps of the years that are over; what stood already at the old base date is left out. */
    private <T extends EObject> List<T> over(List<T> steps, EAttribute year) {
        return steps.stream().filter(s -> (int) s.eGet(year) >= oldBase && (int) s.eGet(year) < newBase).toList();
    }

    /** Later steps that were to replace buses that have gone: the first of a plan for each place that has changed. */
    private List<Replacement> obsolete(Plan plan) {
        List<Replacement> first = new ArrayList<>();
        for (Bus bus : changed) {
            plan.getReplacements().stream().filter(r -> r.getBus() == bus && r.getYear() >= oldBase)
                    .min(Comparator.comparingInt(Replacement::getYear)).filter(r -> r.getYear() >= newBase).ifPresent(first::add);
        }
        first.sort(Comparator.comparingInt(r -> plan.getReplacements().indexOf(r)));
        return first;
    }

    private void replaced(Plan plan, Replacement step) {
        boolean again = plan.getReplacements().stream().anyMatch(r -> r.getBus() == step.getBus() && r.getYear() == newBase);
        if (plan == carriedOut || changed.contains(step.getBus()) || again) {
            String why = plan == carriedOut ? DONE : again ? "the plan has a step for the bus in the new base year"
                    : "its place has changed by the plan that was carried out";
            remove(plan.getReplacements(), step, why);
        } else {
            log.set(step, Literals.REPLACEMENT__YEAR, newBase, LATE);
            if (step.getCascadeTo() != null && changed.contains(step.getCascadeTo())) {
                log.set(step, Literals.REPLACEMENT__CASCADE_TO, null, "that place has changed by the plan that was carried out");
            }
        }
    }

    private <T extends EObject> void remove(List<? super T> list, T step, String why) {
        log.goes(step, why);
        list.remove(step);
    }

    private void writePorts(Plan plan) {
        List<PortPurchase> standing = over(carriedOut.getPortPurchases(), Literals.PORT_PURCHASE__YEAR);
        if (names(standing).equals(names(over(plan.getPortPurchases(), Literals.PORT_PURCHASE__YEAR)))) {
            return;
        }
        Map<PortType, Integer> there = new HashMap<>();
        standing.forEach(p -> there.merge(p.getPortType(), p.getCount(), Integer::sum));
        for (PortPurchase own : over(plan.getPortPurchases(), Literals.PORT_PURCHASE__YEAR)) {
            int covered = Math.min(own.getCount(), there.getOrDefault(own.getPortType(), 0));
            there.merge(own.getPortType(), -covered, Integer::sum);
            if (covered == own.getCount()) {
                remove(plan.getPortPurchases(), own, STANDS);
            } else {
                log.set(own, Literals.PORT_PURCHASE__COUNT, own.getCount() - covered, "the others stand");
                log.set(own, Literals.PORT_PURCHASE__YEAR, newBase, LATE);
            }
        }
        copy(standing, plan.getPortPurchases()).forEach(p -> {
            p.getProgrammes().clear();
            log.added(p, STANDS);
        });
    }

    private static List<String> names(List<PortPurchase> bought) {
        return bought.stream().map(ElementNames::of).sorted().toList();
    }

    private void writeWorks(Plan plan) {
        List<WorkOrder> missing = new ArrayList<>(over(carriedOut.getWorkOrders(), Literals.WORK_ORDER__YEAR));
        for (WorkOrder own : over(plan.getWorkOrders(), Literals.WORK_ORDER__YEAR)) {
            Optional<WorkOrder> same = missing.stream().filter(w -> w.getWork() == own.getWork()).findFirst();
            log.set(own, Literals.WORK_ORDER__YEAR, same.map(WorkOrder::getYear).orElse(newBase), same.isPresent() ? STANDS : LATE);
            same.ifPresent(missing::remove);
        }
        copy(missing, plan.getWorkOrders()).forEach(w -> {
            w.getProgrammes().clear();
            log.added(w, STANDS);
        });
    }

    /** Copies with their references kept, at the front of the list. */
    private static <T extends EObject> List<T> copy(List<T> steps, List<T> into) {
        List<T> copies = new ArrayList<>(EcoreUtil.copyAll(steps));
        into.addAll(0, copies);
        return copies;
    }

    private void writeOneOffs(Plan plan) {
        Set<String> paid = new HashSet<>();
        over(carriedOut.getOneOffCosts(), Literals.ONE_OFF_COST__YEAR).forEach(o -> paid.add(o.getName()));
        for (OneOffCost cost : over(plan.getOneOffCosts(), Literals.ONE_OFF_COST__YEAR)) {
            if (paid.contains(cost.getName())) {
                remove(plan.getOneOffCosts(), cost, "paid, by the plan that was carried out");
            } else {
                log.set(cost, Literals.ONE_OFF_COST__YEAR, newBase, LATE);
            }
        }
    }
}
