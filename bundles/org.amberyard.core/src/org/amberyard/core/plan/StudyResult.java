package org.amberyard.core.plan;

import java.util.List;
import java.util.Optional;
import org.amberyard.core.duty.DutyTable;

/**
 * All results of a study, with the input that they were computed from.
 *
 * @param input the input
 * @param duty energy of every route with every vehicle type that fits it
 * @param fits whether electric types can do the routes
 * @param plans results of the plans, in the order of the input
 * @param comparisons every plan but the baseline against the baseline
 */
public record StudyResult(StudyInput input, DutyTable duty, List<RouteFit> fits, List<PlanResult> plans,
        List<Comparison> comparisons) {

    public StudyResult {
        fits = List.copyOf(fits);
        plans = List.copyOf(plans);
        comparisons = List.copyOf(comparisons);
    }

    /** Results of the baseline. */
    public PlanResult baseline() {
        return plans.get(input.baseline());
    }

    /** The fit of a type on a route, when the body fits. */
    public Optional<RouteFit> fit(int route, int type) {
        return fits.stream().filter(f -> f.route() == route && f.type() == type).findFirst();
    }

    /** The fit on a route with the largest margin on the worst day when new, under the study's charging habit. */
    public Optional<RouteFit> bestFit(int route) {
        boolean midday = input.depot().middayCharging();
        return fits.stream().filter(f -> f.route() == route)
                .max((a, b) -> Double.compare(a.whenNew(midday).marginKwh(), b.whenNew(midday).marginKwh()));
    }
}
