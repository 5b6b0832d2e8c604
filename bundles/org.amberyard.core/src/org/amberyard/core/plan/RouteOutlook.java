package org.amberyard.core.plan;

import java.util.List;
import java.util.Optional;

/**
 * What a plan means for one route, and what could be done where an electric bus fails it.
 *
 * @param answer the answer of the plan
 * @param fit what is known of its fit; empty where no electric type is judged
 * @param remedies remedies where it fails with an aged pack, best first
 */
public record RouteOutlook(RouteAnswer answer, Optional<FitOutlook> fit, List<Remedy> remedies) {

    public RouteOutlook {
        remedies = List.copyOf(remedies);
    }

    /** Days of a year that fail with a new pack; empty where no electric type is judged. */
    public Optional<FailingDays> failingWhenNew() {
        return fit.map(FitOutlook::failingWhenNew);
    }

    /** The same with an aged pack. */
    public Optional<FailingDays> failingWhenAged() {
        return fit.map(FitOutlook::failingWhenAged);
    }

    /** The first remedy that cures; keeping an engine bus where no other does. */
    public Optional<Remedy> cure() {
        return remedies.stream().filter(Remedy::cures).findFirst();
    }
}
