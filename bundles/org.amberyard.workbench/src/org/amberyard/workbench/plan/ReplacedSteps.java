package org.amberyard.workbench.plan;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.plans.Plan;
import org.amberyard.study.BusSteps;
import org.eclipse.osgi.util.NLS;

/** What a change of steps takes away, in words: a stroke in one year may take a step of another. */
final class ReplacedSteps {
    private static final int MOST_NAMED = 4;

    private ReplacedSteps() {
    }

    /** Steps that a plan has now and will not have in their year; empty when there are none. */
    static Optional<String> words(Plan plan, Collection<BusSteps> after) {
        List<String> gone = after.stream().flatMap(next -> BusSteps.of(plan, next.bus()).steps().stream()
                .filter(step -> next.in(step.year()).isEmpty())
                .map(step -> ElementNames.of(next.bus()) + " " + step.year() + " " + StepText.of(step))).sorted().toList();
        if (gone.isEmpty()) {
            return Optional.empty();
        }
        String named = gone.stream().limit(MOST_NAMED).collect(Collectors.joining(", "));
        return Optional.of(NLS.bind(Messages.Stroke_replaced,
                gone.size() > MOST_NAMED ? NLS.bind(Messages.Stroke_more, named, gone.size() - MOST_NAMED) : named));
    }
}
