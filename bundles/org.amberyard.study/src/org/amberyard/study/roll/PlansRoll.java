package org.amberyard.study.roll;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.amberyard.model.common.Sourced;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.meta.Phrase;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.plans.PlansPackage.Literals;
import org.amberyard.model.plans.Replacement;
import org.amberyard.model.study.Study;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;

/**
 * Steps of the years that are over. What the plan that was carried out did is there: buses in the fleet, ports and works with the
 * year in which they were bought, in every plan. What another plan had for these years and nobody did falls in the new base year.
 */
final class PlansRoll {
    private static final String DONE = "done in the years that are over";

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
        }
        StandingSteps standing = new StandingSteps(log, carriedOut, oldBase, newBase);
        study.getPlans().stream().filter(plan -> plan != carriedOut).forEach(standing::write);
        over(carriedOut.getOneOffCosts(), Literals.ONE_OFF_COST__YEAR).forEach(o -> remove(carriedOut.getOneOffCosts(), o, DONE));
        for (Plan plan : study.getPlans()) {
            plan.getPortPurchases().stream().filter(p -> p.getYear() < newBase)
                    .forEach(p -> log.set(p, Literals.PORT_PURCHASE__PROGRAMMES, List.of(), StandingSteps.STANDS));
            plan.getWorkOrders().stream().filter(w -> w.getYear() < newBase)
                    .forEach(w -> log.set(w, Literals.WORK_ORDER__PROGRAMMES, List.of(), StandingSteps.STANDS));
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
        return StandingSteps.between(steps, year, oldBase, newBase);
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
        TakenPlaces taken = new TakenPlaces(plan, newBase);
        Optional<String> why = noLonger(plan, step, taken);
        if (why.isPresent()) {
            remove(plan.getReplacements(), step, why.get());
            return;
        }
        log.set(step, Literals.REPLACEMENT__YEAR, newBase, StandingSteps.LATE);
        if (step.getCascadeTo() != null && changed.contains(step.getCascadeTo())) {
            log.set(step, Literals.REPLACEMENT__CASCADE_TO, null, "that place has changed by the plan that was carried out");
        } else if (taken.target(step)) {
            log.set(step, Literals.REPLACEMENT__CASCADE_TO, null, "another step fills that place in the new base year, so the old bus is sold");
        }
    }

    /** Why a step of the years that are over does not fall in the new base year; empty where it does. */
    private Optional<String> noLonger(Plan plan, Replacement step, TakenPlaces taken) {
        if (plan == carriedOut) {
            return Optional.of(DONE);
        }
        if (changed.contains(step.getBus())) {
            return Optional.of("its place has changed by the plan that was carried out");
        }
        if (taken.replaced(step)) {
            return Optional.of("the plan has a step for the bus in the new base year");
        }
        return taken.movedInto(step) ? Optional.of("the plan moves another bus to its place in the new base year") : Optional.empty();
    }

    private <T extends EObject> void remove(List<? super T> list, T step, String why) {
        log.goes(step, why);
        list.remove(step);
    }
}
