package org.amberyard.core.variants;

import java.util.Collections;
import java.util.List;
import org.amberyard.core.plan.StudyResult;

/**
 * By how much results are missed that are read off a fitted surface, root mean square, each in the unit of the result; 0 where
 * they are evaluated.
 *
 * @param presentCosts by plan
 * @param savings by plan: of the present cost of the baseline less its own
 * @param appropriations by plan and year
 */
public record FitErrors(List<Double> presentCosts, List<Double> savings, List<List<Double>> appropriations) {

    public FitErrors {
        presentCosts = List.copyOf(presentCosts);
        savings = List.copyOf(savings);
        appropriations = appropriations.stream().map(List::copyOf).toList();
    }

    /** By how much what is appropriated up to a year, that year included, is missed at most: errors of sums are no greater than their sums. */
    public double spentAtMost(int plan, int year) {
        return appropriations.get(plan).subList(0, year + 1).stream().mapToDouble(e -> e).sum();
    }

    /** Of a study whose results are all evaluated. */
    public static FitErrors none(StudyResult base) {
        List<Double> plans = Collections.nCopies(base.plans().size(), 0.0);
        return new FitErrors(plans, plans, Collections.nCopies(base.plans().size(), Collections.nCopies(base.input().years(), 0.0)));
    }
}
