package org.amberyard.core.variants;

import java.util.Collections;
import java.util.List;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.whatif.Miss;

/**
 * By how much results are missed that are read off a fitted surface, each in the unit of the result; nothing where they are
 * evaluated.
 *
 * @param heldOut evaluations that were kept out of the fit, from which the misses are told
 * @param presentCosts by plan
 * @param savings by plan: of the present cost of the baseline less its own
 * @param appropriations by plan and year
 * @param spent by plan and year: of appropriations up to that year, that year included
 * @param spentMore by plan and year: the same less that of the baseline
 */
public record FitErrors(int heldOut, List<Miss> presentCosts, List<Miss> savings, List<List<Miss>> appropriations,
        List<List<Miss>> spent, List<List<Miss>> spentMore) {

    public FitErrors {
        presentCosts = List.copyOf(presentCosts);
        savings = List.copyOf(savings);
        appropriations = appropriations.stream().map(List::copyOf).toList();
        spent = spent.stream().map(List::copyOf).toList();
        spentMore = spentMore.stream().map(List::copyOf).toList();
    }

    /** Of a study whose results are all evaluated. */
    public static FitErrors none(StudyResult base) {
        List<Miss> plans = Collections.nCopies(base.plans().size(), Miss.NONE);
        List<List<Miss>> years = Collections.nCopies(base.plans().size(), Collections.nCopies(base.input().years(), Miss.NONE));
        return new FitErrors(0, plans, plans, years, years, years);
    }
}
