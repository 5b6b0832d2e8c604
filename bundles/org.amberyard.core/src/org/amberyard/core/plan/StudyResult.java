package org.amberyard.core.plan;

import java.util.List;
import org.amberyard.core.duty.DutyTable;

/**
 * All results of a study, with the input that they were computed from.
 *
 * @param input the input
 * @param duty energy of every route with every vehicle type that fits it
 * @param fits whether electric types can do the routes with the ports on offer
 * @param plans results of the plans, in the order of the input
 * @param comparisons every plan but the baseline against the baseline
 * @param tripCovers who covers the trips in the last year, in the order of the plans
 * @param spareCovers what the spares can stand in for in the last year, in the order of the plans
 * @param outlooks for every plan, what it means for each route, with failing days and remedies
 */
public record StudyResult(StudyInput input, DutyTable duty, RouteFits fits, List<PlanResult> plans,
        List<Comparison> comparisons, List<TripCover> tripCovers, List<SpareCover> spareCovers,
        List<List<RouteOutlook>> outlooks) {

    public StudyResult {
        plans = List.copyOf(plans);
        comparisons = List.copyOf(comparisons);
        tripCovers = List.copyOf(tripCovers);
        spareCovers = List.copyOf(spareCovers);
        outlooks = outlooks.stream().map(List::copyOf).toList();
    }

    /** The same with the outlooks of the routes, which are found from all the rest. */
    StudyResult withOutlooks(List<List<RouteOutlook>> found) {
        return new StudyResult(input, duty, fits, plans, comparisons, tripCovers, spareCovers, found);
    }

    /** Results of the baseline. */
    public PlanResult baseline() {
        return plans.get(input.baseline());
    }
}
