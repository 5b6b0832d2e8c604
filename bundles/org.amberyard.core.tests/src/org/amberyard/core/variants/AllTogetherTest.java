package org.amberyard.core.variants;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Collections;
import java.util.List;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.plan.StudyEvaluation;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.plan.TinyDistrict;
import org.amberyard.core.whatif.Band;
import org.amberyard.core.whatif.Convergence;
import org.amberyard.core.whatif.Miss;
import org.amberyard.core.whatif.RunEnd;
import org.junit.jupiter.api.Test;

/** Four draws of two plans with invented costs, counted by hand; plan 0 is the baseline. */
class AllTogetherTest {
    private static final StudyResult BASE = StudyEvaluation.of(TinyDistrict.study(), DutyTable.of(TinyDistrict.study().duty()));
    private static final double[][] COSTS = {{100, 110, 120, 130}, {90, 115, 110, 140}};
    private static final double[][][] SPENT = {{{1, 2, 3, 4}, {10, 10, 10, 10}, {0, 0, 0, 0}, {0, 0, 0, 0}},
        {{50, 60, 70, 80}, {5, 5, 5, 1}, {0, 0, 0, 0}, {0, 0, 0, 0}}};

    private static AllTogether draws(FitErrors missed) {
        return new AllTogether(BASE, new RunEnd(4, RunEnd.Reason.COMPLETE), COSTS, SPENT, new double[] {1, 0, 0, 1}, 1, missed);
    }

    private final AllTogether all = draws(FitErrors.none(BASE));

    @Test
    void percentilesAreThoseOfTheDraws() {
        assertEquals(112.5, all.presentCost(1).quantile(0.5), 1e-12);
        assertEquals(new Band(112.5, 112.5, 112.5), all.percentile(1, 0.5));
        assertEquals(new Band(2.5, 2.5, 2.5), all.savingPercentile(1, 0.5), "savings are 10, -5, 10 and -10");
        assertArrayEquals(COSTS[1], all.presentCosts(1));
        assertEquals(2, all.evaluatedWholly());
        assertEquals(4, all.end().draws());
    }

    /** Draws read off a surface may be missed by 3, and a twentieth of them by anything. */
    @Test
    void whatIsReadOffASurfaceLiesWithinABand() {
        Miss three = new Miss(3, 3, 0, 1);
        List<Miss> none = Collections.nCopies(2, Miss.NONE);
        List<List<Miss>> years = List.of(Collections.nCopies(4, Miss.NONE), Collections.nCopies(4, Miss.NONE));
        AllTogether fitted = draws(new FitErrors(59, List.of(Miss.NONE, three), none, years, years, years));
        Band median = fitted.percentile(1, 0.5);
        assertEquals(112.5, median.value(), 1e-12);
        assertEquals(112.5 - 0.15 * 5 - 3, median.low(), 1e-9, "0.15 of the way from 115 back to 110 is the 45th percentile");
        assertEquals(112.5 + 0.15 * 5 + 3, median.high(), 1e-9);
        assertEquals(three, fitted.missed().presentCosts().get(1));
    }

    @Test
    void moneyIsSpentUpToAYear() {
        assertEquals(60, all.appropriation(1, 0).quantile(1.0 / 3), 1e-9);
        assertEquals(81, all.spent(1, 1).quantile(1), 1e-12);
        assertEquals(55, all.spent(1, 2).quantile(0), 1e-12);
        assertEquals(55 - 11, all.spentMore(1, 0, 1).quantile(0), 1e-12, "draw by draw: 44, 53, 62 and 67");
        assertEquals(67, all.spentMore(1, 0, 1).quantile(1), 1e-12);
    }

    @Test
    void regretIsAgainstTheCheapestOfTheDraw() {
        assertEquals(10, all.regret(1).quantile(1), 1e-12, "140 and not 130");
        assertEquals(0, all.regret(1).quantile(0), 1e-12);
        assertEquals(0.5, all.plans().cheaper(1, 0).share(), 1e-12);
    }

    /** 100 to 130 in tens have a standard deviation of the root of 500 / 3; Student's 3.1824 of four draws is wider than the normal 1.9600. */
    @Test
    void theMeanIsKnownToItsStandardError() {
        assertEquals(115, all.moments(0).mean(), 1e-12);
        assertEquals(Math.sqrt(500.0 / 3) / 2 * 3.182446 / 1.959964, all.standardError(0), 1e-5);
        List<Convergence> course = all.convergence(1);
        assertEquals(List.of(1, 2, 3, 4), course.stream().map(Convergence::draws).toList());
        assertEquals(1.25, course.get(3).mean(), 1e-12);
        assertEquals(2.5, course.get(1).mean(), 1e-12);
    }

    /** Without a cap the budget is what the study itself appropriates. */
    @Test
    void theBudgetAtRiskIsAboveWhatTheStudyAppropriates() {
        double budget = BASE.plans().get(1).finance().budget().get(0).appropriation();
        assertEquals(70 - budget, all.budgetRisk(1, 0, 2.0 / 3).atRisk(), 1e-9);
    }

    @Test
    void whatIsEvaluatedIsNotMissed() {
        FitErrors none = FitErrors.none(BASE);
        assertEquals(List.of(Miss.NONE, Miss.NONE), none.presentCosts());
        assertEquals(4, none.spentMore().get(1).size());
        assertEquals(0, none.heldOut());
    }
}
