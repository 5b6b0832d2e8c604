package org.amberyard.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.RouteFit;
import org.amberyard.core.plan.RouteFits;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.testsupport.SampleDistrict;
import org.junit.jupiter.api.Test;

/** Routes R01 and R02 go electric in the sample; fits are taken away or swapped to reach the rarer wordings. */
class RouteSentenceTest {
    private final StudyResult result = SampleDistrict.evaluated(SampleDistrict.small());

    private StudyResult with(List<RouteFit> fits) {
        RouteFits changed = new RouteFits(fits);
        List<PlanResult> plans = result.plans().stream().map(p -> new PlanResult(p.plan(), p.fleet(), p.upkeep(), p.costs(),
                p.air(), p.yards(), p.yardComparison(), p.service(), changed, p.finance(), p.measures())).toList();
        return new StudyResult(result.input(), result.duty(), changed, plans, result.tripCovers(), result.spareCovers());
    }

    /** The fit of a route, with the outcome of the hopeless route R03. */
    private RouteFit failing(int route, int type) {
        RouteFit bad = result.fits().of(2, 2).orElseThrow();
        return new RouteFit(route, type, bad.batteryKw(), bad.worstMonth(), bad.newOvernight(), bad.newMidday(),
                bad.agedOvernight(), bad.agedMidday(), bad.agedYears(), bad.agedHealth(), 0, bad.verdict(),
                bad.months());
    }

    @Test
    void allFail() {
        String text = new RouteSentence(with(List.of(failing(0, 1), failing(1, 2))), 1).text();
        assertTrue(text.contains(", all of them fail the worst operated day even with a new pack; "), text);
    }

    @Test
    void someCannotBeJudged() {
        List<RouteFit> fits = new ArrayList<>(result.fits().list());
        fits.removeIf(f -> f.route() == 0);
        String text = new RouteSentence(with(fits), 1).text();
        assertTrue(text.startsWith("Of 3 routes, 2 go electric in this plan, 1 has no run or a bus of another body type and "
                + "cannot be judged. Charged overnight and between runs, the one that can be judged manages"), text);
    }

    @Test
    void noneCanBeJudged() {
        assertEquals("Of 3 routes, 2 go electric in this plan, 2 have no run or a bus of another body type and cannot be "
                + "judged; 1 of the others cannot be served by any electric bus listed.",
                new RouteSentence(with(List.of()), 1).text());
    }

    @Test
    void theBaselineLeavesAllToEnginesAndNothingCouldServe() {
        assertEquals("None of the 3 routes goes electric in this plan; no electric bus listed could serve any of them on the "
                + "worst operated day.", new RouteSentence(with(List.of()), 0).text());
    }
}
