package org.amberyard.study.roll;

import java.util.List;
import java.util.Optional;
import org.amberyard.model.common.Sourced;
import org.amberyard.model.meta.DatedSteps;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.meta.Phrase;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.plans.Replacement;

/** Steps of the plan that was carried out which fall in the new base year, as nobody took them in time. */
final class LateSteps {
    private final RollLog log;
    private final Plan plan;
    private final int newBase;

    LateSteps(RollLog log, Plan plan, int newBase) {
        this.log = log;
        this.plan = plan;
        this.newBase = newBase;
    }

    /** Moves steps in their order; one that cannot fall in that year stays, and the reason is told. */
    void move(List<Sourced> late) {
        for (Sourced step : late) {
            Optional<String> why = step instanceof Replacement replacement ? refused(replacement) : Optional.empty();
            why.ifPresentOrElse(reason -> log.remark(Phrase.start(ElementNames.withKind(step)) + " is not moved to " + newBase
                    + " and counts as carried out: " + reason), () -> moveOne(step));
        }
    }

    private void moveOne(Sourced step) {
        log.set(step, DatedSteps.yearField(step), newBase, "not carried out in time");
    }

    private Optional<String> refused(Replacement step) {
        TakenPlaces taken = new TakenPlaces(plan, newBase);
        if (taken.replaced(step)) {
            return Optional.of("another step of that year replaces its bus; take out one of the two before rolling.");
        }
        if (taken.movedInto(step)) {
            return Optional.of("another step of that year moves a bus to its place; take out one of the two before rolling.");
        }
        return taken.target(step) ? Optional.of("another step of that year fills the place to which its old bus moves; clear one of the "
                + "two before rolling.") : Optional.empty();
    }
}
