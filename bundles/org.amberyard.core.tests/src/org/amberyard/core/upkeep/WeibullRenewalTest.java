package org.amberyard.core.upkeep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.apache.commons.math3.distribution.WeibullDistribution;
import org.apache.commons.math3.random.Well19937c;
import org.apache.commons.math3.special.Gamma;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;
import org.junit.jupiter.api.Test;

/** Against closed forms of renewal theory and a long simulation. */
class WeibullRenewalTest {
    private static final double MEAN_KM = 40_000;

    @Test
    void shapeOneIsAPoissonProcess() {
        WeibullRenewal chance = new WeibullRenewal(1, MEAN_KM, 400_000);
        assertEquals(2.5, chance.expected(100_000), 1e-12);
        assertEquals(2.5, chance.variance(50_000, 150_000), 1e-9, "the variance of a Poisson count is its mean");
    }

    @Test
    void theEquationSolvedNearShapeOneMeetsTheClosedForm() {
        WeibullRenewal almost = new WeibullRenewal(1 + 1e-9, MEAN_KM, 400_000);
        assertEquals(2.5, almost.expected(100_000), 2.5e-3);
        assertEquals(2.5, almost.variance(50_000, 150_000), 2.5e-2);
    }

    /** M(t) tends to t/mean + (variance/mean² − 1)/2: Smith's limit of renewal theory (textbook, from memory). */
    @Test
    void farOutTheCountFollowsTheLimitOfRenewalTheory() {
        double shape = 2.5;
        double squares = Gamma.gamma(1 + 2 / shape) / Math.pow(Gamma.gamma(1 + 1 / shape), 2);
        double limit = 12 + (squares - 2) / 2;
        assertEquals(limit, new WeibullRenewal(shape, 1, 15).expected(12), 2e-3);
    }

    @Test
    void countAndVarianceAgreeWithALongSimulation() {
        double shape = 2.2;
        WeibullRenewal renewal = new WeibullRenewal(shape, MEAN_KM, 200_000);
        SummaryStatistics seen = simulated(shape, 60_000, 140_000, 100_000);
        double standardError = seen.getStandardDeviation() / Math.sqrt(seen.getN());
        assertEquals(seen.getMean(), renewal.expected(60_000, 140_000), 4 * standardError);
        assertEquals(seen.getVariance(), renewal.variance(60_000, 140_000), 0.02 * seen.getVariance());
        assertTrue(seen.getVariance() < seen.getMean(), "wear-out spreads less than chance");
    }

    private static SummaryStatistics simulated(double shape, double fromKm, double toKm, int buses) {
        WeibullDistribution life = new WeibullDistribution(new Well19937c(4711), shape,
                MEAN_KM / Gamma.gamma(1 + 1 / shape));
        SummaryStatistics counts = new SummaryStatistics();
        for (int bus = 0; bus < buses; bus++) {
            int failures = 0;
            for (double km = life.sample(); km < toKm; km += life.sample()) {
                failures += km >= fromKm ? 1 : 0;
            }
            counts.addValue(failures);
        }
        return counts;
    }

    /** The rate tends to one failure a mean life, so that is what lies beyond the longest age. */
    @Test
    void beyondTheLongestAgeFailuresComeAtTheLongRunRate() {
        WeibullRenewal renewal = new WeibullRenewal(2.5, 3, 12);
        assertEquals(renewal.expected(12) + 2, renewal.expected(18), 1e-12);
        assertEquals(new WeibullRenewal(2.5, 3, 30).expected(18), renewal.expected(18), 0.01);
        assertEquals(renewal.expected(12), renewal.expected(12 - 1e-9), 1e-8);
    }

    /** Steps are so short that it does not matter up to which age the equation is solved. */
    @Test
    void countsDoNotHangOnTheLongestAge() {
        for (double age : new double[] {10_000, 35_000, 90_000}) {
            double near = new WeibullRenewal(2.5, MEAN_KM, 100_000).expected(age);
            assertEquals(near, new WeibullRenewal(2.5, MEAN_KM, 1_000_000).expected(age), 1e-3 * near);
        }
    }

    @Property(tries = 50)
    void partsOfAStretchAddUpAndCountsNeverFall(@ForAll @DoubleRange(min = 0.8, max = 5) double shape,
            @ForAll @DoubleRange(min = 0, max = 5) double cut) {
        WeibullRenewal renewal = new WeibullRenewal(shape, 1, 5);
        assertEquals(renewal.expected(0, 5), renewal.expected(0, cut) + renewal.expected(cut, 5), 1e-12);
        assertTrue(renewal.expected(cut, 5) >= 0);
    }
}
