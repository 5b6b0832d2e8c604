package org.amberyard.study.roll;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.amberyard.model.depot.PortType;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.plans.OneOffCost;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.plans.PlansPackage.Literals;
import org.amberyard.model.plans.PortPurchase;
import org.amberyard.model.plans.WorkOrder;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * Ports, works and one-off costs of the plan that was carried out, in the other plans. What stands is not bought again: it takes
 * the place of what another plan had for the years that are over, then of the first that it has for later years.
 */
final class StandingSteps {
    static final String STANDS = "it stands, by the plan that was carried out";
    static final String LATE = "not done in the years that are over";
    private static final String OTHERS_STAND = "the others stand";
    private static final String PAID = "paid, by the plan that was carried out";

    private final RollLog log;
    private final int oldBase;
    private final int newBase;
    private final List<PortPurchase> ports;
    private final List<WorkOrder> works;
    private final List<OneOffCost> paid;

    /** @param carriedOut plan that was carried out, with its steps of the years that are over */
    StandingSteps(RollLog log, Plan carriedOut, int oldBase, int newBase) {
        this.log = log;
        this.oldBase = oldBase;
        this.newBase = newBase;
        this.ports = between(carriedOut.getPortPurchases(), Literals.PORT_PURCHASE__YEAR, oldBase, newBase);
        this.works = between(carriedOut.getWorkOrders(), Literals.WORK_ORDER__YEAR, oldBase, newBase);
        this.paid = between(carriedOut.getOneOffCosts(), Literals.ONE_OFF_COST__YEAR, oldBase, newBase);
    }

    /** Steps from a year on and before another, in their order. */
    static <T extends EObject> List<T> between(List<T> steps, EAttribute year, int from, int before) {
        return steps.stream().filter(s -> (int) s.eGet(year) >= from && (int) s.eGet(year) < before).toList();
    }

    /** Writes them into a plan that was not carried out. */
    void write(Plan plan) {
        writePorts(plan);
        writeWorks(plan);
        writeOneOffs(plan);
    }

    private <T extends EObject> List<T> over(List<T> steps, EAttribute year) {
        return between(steps, year, oldBase, newBase);
    }

    /** Steps of the new base year and later, the first in time first. */
    private <T extends EObject> List<T> later(List<T> steps, EAttribute year) {
        return between(steps, year, newBase, Integer.MAX_VALUE).stream().sorted(Comparator.comparingInt(s -> (int) s.eGet(year))).toList();
    }

    private <T extends EObject> void remove(List<? super T> list, T step, String why) {
        log.goes(step, why);
        list.remove(step);
    }

    private void writePorts(Plan plan) {
        List<PortPurchase> own = over(plan.getPortPurchases(), Literals.PORT_PURCHASE__YEAR);
        if (names(ports).equals(names(own))) {
            return;
        }
        List<PortPurchase> later = later(plan.getPortPurchases(), Literals.PORT_PURCHASE__YEAR);
        Map<PortType, Integer> there = new HashMap<>();
        ports.forEach(p -> there.merge(p.getPortType(), p.getCount(), Integer::sum));
        for (PortPurchase purchase : own) {
            if (reduce(plan, purchase, there)) {
                log.set(purchase, Literals.PORT_PURCHASE__YEAR, newBase, LATE);
            }
        }
        later.forEach(purchase -> reduce(plan, purchase, there));
        copy(ports, plan.getPortPurchases()).forEach(p -> {
            p.getProgrammes().clear();
            log.added(p, STANDS);
        });
    }

    /** True where something is left to buy. */
    private boolean reduce(Plan plan, PortPurchase purchase, Map<PortType, Integer> there) {
        int covered = Math.min(purchase.getCount(), there.getOrDefault(purchase.getPortType(), 0));
        there.merge(purchase.getPortType(), -covered, Integer::sum);
        if (covered > 0 && covered == purchase.getCount()) {
            remove(plan.getPortPurchases(), purchase, STANDS);
            return false;
        }
        log.set(purchase, Literals.PORT_PURCHASE__COUNT, purchase.getCount() - covered, OTHERS_STAND);
        return true;
    }

    private static List<String> names(List<PortPurchase> bought) {
        return bought.stream().map(ElementNames::of).sorted().toList();
    }

    private void writeWorks(Plan plan) {
        List<WorkOrder> later = later(plan.getWorkOrders(), Literals.WORK_ORDER__YEAR);
        List<WorkOrder> missing = new ArrayList<>(works);
        for (WorkOrder own : over(plan.getWorkOrders(), Literals.WORK_ORDER__YEAR)) {
            Optional<WorkOrder> same = missing.stream().filter(w -> w.getWork() == own.getWork()).findFirst();
            log.set(own, Literals.WORK_ORDER__YEAR, same.map(WorkOrder::getYear).orElse(newBase), same.isPresent() ? STANDS : LATE);
            same.ifPresent(missing::remove);
        }
        List<WorkOrder> ordered = new ArrayList<>(later);
        for (WorkOrder stands : missing) {
            ordered.stream().filter(w -> w.getWork() == stands.getWork()).findFirst().ifPresent(again -> {
                ordered.remove(again);
                remove(plan.getWorkOrders(), again, STANDS);
            });
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
        List<OneOffCost> own = over(plan.getOneOffCosts(), Literals.ONE_OFF_COST__YEAR);
        List<OneOffCost> later = later(plan.getOneOffCosts(), Literals.ONE_OFF_COST__YEAR);
        Map<String, Integer> left = new HashMap<>();
        paid.forEach(o -> left.merge(o.getName(), 1, Integer::sum));
        for (OneOffCost cost : own) {
            if (!paidFor(plan, cost, left)) {
                log.set(cost, Literals.ONE_OFF_COST__YEAR, newBase, LATE);
            }
        }
        later.forEach(cost -> paidFor(plan, cost, left));
    }

    /** Takes a cost out where it was paid; true then. */
    private boolean paidFor(Plan plan, OneOffCost cost, Map<String, Integer> left) {
        if (left.getOrDefault(cost.getName(), 0) == 0) {
            return false;
        }
        left.merge(cost.getName(), -1, Integer::sum);
        remove(plan.getOneOffCosts(), cost, PAID);
        return true;
    }
}
