package org.amberyard.core.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.apache.commons.math3.distribution.BetaDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DistributionTest {
    private static final int STEPS = 100_000;

    static Stream<Distribution> all() {
        return Stream.of(new Uniform(2, 5), new Triangular(1, 2, 5), new Triangular(1, 1, 5), new Triangular(1, 5, 5),
                new Normal(10, 3), new TruncatedNormal(new Normal(10, 3), 8, 20),
                new TruncatedNormal(new Normal(0, 1), 2, 4), new TruncatedNormal(new Normal(0, 1), -4, -2),
                LogNormal.ofMedian(120, 200), LogNormal.ofMedian(96, 154),
                new TruncatedLogNormal(LogNormal.ofMedian(120, 200), 90, Double.POSITIVE_INFINITY),
                new TruncatedLogNormal(LogNormal.ofMedian(120, 200), -1, 150), new Pert(1, 2, 6), new Pert(0, 0, 1),
                new Discrete(List.of(3.0, 1.0, 2.0), List.of(1.0, 2.0, 5.0)),
                new Empirical(List.of(3.1, 1.2, 9.9, 4.4, 4.4)));
    }

    /** Mean and deviation are those of what the quantiles give at shares in equal steps. */
    @ParameterizedTest
    @MethodSource("all")
    void momentsAreThoseOfTheQuantiles(Distribution distribution) {
        double[] drawn = new double[STEPS];
        for (int step = 0; step < STEPS; step++) {
            drawn[step] = distribution.quantile((step + 0.5) / STEPS);
        }
        Moments moments = Moments.of(drawn);
        assertEquals(distribution.mean(), moments.mean(), 2e-4 * distribution.sd());
        assertEquals(distribution.sd(), moments.sd(), 1e-3 * distribution.sd());
    }

    @ParameterizedTest
    @MethodSource("all")
    void quantilesRiseAndSharesAreChecked(Distribution distribution) {
        double before = distribution.quantile(0);
        for (int step = 1; step <= 1000; step++) {
            double next = distribution.quantile(step / 1000.0);
            assertTrue(next >= before);
            before = next;
        }
        assertThrows(IllegalArgumentException.class, () -> distribution.quantile(1.1));
        assertThrows(IllegalArgumentException.class, () -> distribution.quantile(Double.NaN));
    }

    @Test
    void mediansAndPercentilesAsGiven() {
        assertEquals(120, LogNormal.ofMedian(120, 200).quantile(0.5), 1e-12);
        assertEquals(200, LogNormal.ofMedian(120, 200).quantile(0.95), 1e-10);
    }

    /** Limits that cut nothing off leave the digits as they are. */
    @Test
    void aCutLogNormalStaysWithinItsLimits() {
        LogNormal whole = LogNormal.ofMedian(120, 200);
        TruncatedLogNormal cut = new TruncatedLogNormal(whole, 90, 150);
        assertEquals(90, cut.quantile(0), 0);
        assertEquals(150, cut.quantile(1), 1e-12);
        assertTrue(cut.quantile(1) <= 150);
        assertEquals(whole.quantile(0.37), new TruncatedLogNormal(whole, -1, Double.POSITIVE_INFINITY).quantile(0.37), 0);
    }

    /** A share below or at the sum of shares takes the value; a value without weight is never drawn. */
    @Test
    void discreteByHand() {
        Discrete discrete = new Discrete(List.of(7.0, 1.0, 9.0, 0.0), List.of(2.0, 2.0, 0.0, 0.0));
        assertEquals(List.of(0.0, 1.0, 7.0, 9.0), discrete.values());
        assertEquals(1, discrete.quantile(0), 0);
        assertEquals(1, discrete.quantile(0.5), 0);
        assertEquals(7, discrete.quantile(0.51), 0);
        assertEquals(7, discrete.quantile(1), 0);
        assertEquals(4, discrete.mean(), 0);
        assertEquals(3, discrete.sd(), 1e-15);
    }

    /** A normal distribution cut in its upper tail mirrors one cut in its lower tail, digit for digit. */
    @Property(tries = 200)
    void tailsMirrorEachOther(@ForAll @DoubleRange(min = 0, max = 1) double share) {
        double lower = new TruncatedNormal(new Normal(0, 1), -4.5, -3).quantile(share);
        assertEquals(-lower, new TruncatedNormal(new Normal(0, 1), 3, 4.5).quantile(1 - share), 1e-12);
    }

    /**
     * The table behind the quantiles of PERT beside the beta distribution itself, over all shares and kinds of skew.
     */
    @Property(tries = 300)
    void pertIsABetaDistribution(@ForAll @DoubleRange(min = 0, max = 1) double mode,
            @ForAll @DoubleRange(min = -6, max = 6) double score) {
        double share = NormalQuantile.shareBelow(score);
        double exact = new BetaDistribution(null, 1 + 4 * mode, 1 + 4 * (1 - mode), 1e-13)
                .inverseCumulativeProbability(share);
        assertEquals(exact, new Pert(0, mode, 1).quantile(share), 1e-10);
    }

    /** Distributions with the same parameters are the same, so that an edit that changes nothing is seen as none. */
    @Test
    void equalByParameters() {
        TruncatedNormal cut = new TruncatedNormal(new Normal(0, 1), -1, 2);
        assertEquals(cut, new TruncatedNormal(new Normal(0, 1), -1, 2));
        assertEquals(cut.hashCode(), new TruncatedNormal(new Normal(0, 1), -1, 2).hashCode());
        assertNotEquals(cut, new TruncatedNormal(new Normal(0, 1), -1, 3));
        TruncatedLogNormal above = new TruncatedLogNormal(new LogNormal(0, 1), -1, 2);
        assertEquals(above, new TruncatedLogNormal(new LogNormal(0, 1), 0, 2));
        assertEquals(above.hashCode(), new TruncatedLogNormal(new LogNormal(0, 1), 0, 2).hashCode());
        assertEquals("LogNormal[logMean=0.0, logSd=1.0] from 0.0 to 2.0", above.toString());
        Pert pert = new Pert(1, 2, 6);
        assertEquals(pert, new Pert(1, 2, 6));
        assertEquals(pert.hashCode(), new Pert(1, 2, 6).hashCode());
        assertNotEquals(pert, new Pert(1, 3, 6));
        assertEquals("Pert[low=1.0, mode=2.0, high=6.0]", pert.toString());
        assertEquals("Normal[mean=0.0, sd=1.0] from -1.0 to 2.0", cut.toString());
        assertEquals(new Discrete(List.of(2.0, 1.0), List.of(1.0, 3.0)),
                new Discrete(List.of(1.0, 2.0), List.of(6.0, 2.0)));
    }

    private static void says(String message, Executable made) {
        assertEquals(message, assertThrows(IllegalArgumentException.class, made).getMessage());
    }

    @Test
    void messagesNameTheParameter() {
        says("Upper limit of the uniform distribution is 2.0 but must be above 5.0", () -> new Uniform(5, 2));
        says("Lower limit of the uniform distribution is NaN but must be a finite number",
                () -> new Uniform(Double.NaN, 2));
        says("Most likely value of the triangular distribution is 7.0 but must be from 1.0 to 5.0",
                () -> new Triangular(1, 7, 5));
        says("Most likely value of the PERT distribution is 0.0 but must be from 1.0 to 5.0", () -> new Pert(1, 0, 5));
        says("Standard deviation of the normal distribution is 0.0 but must be above 0", () -> new Normal(1, 0));
        says("Lower limit of the normal distribution is 3.0 but must be below its upper limit 2.0",
                () -> new TruncatedNormal(new Normal(1, 1), 3, 2));
        says("Limits of the normal distribution are 90.0 and 99.0 but must leave at least a millionth of the curve"
                + " with mean 1.0 and standard deviation 1.0", () -> new TruncatedNormal(new Normal(1, 1), 90, 99));
        says("95th percentile of the lognormal distribution is 80.0 but must be above 90.0",
                () -> LogNormal.ofMedian(90, 80));
        says("Upper limit of the lognormal distribution is 0.0 but must be above 0.0",
                () -> new TruncatedLogNormal(new LogNormal(0, 1), -1, 0));
        says("Weights of the discrete distribution are 1 but must be one for each of its 2 values",
                () -> new Discrete(List.of(1.0, 2.0), List.of(1.0)));
        says("Sum of the weights of the discrete distribution is 0.0 but must be above 0",
                () -> new Discrete(List.of(1.0), List.of(0.0)));
        says("Number of observations of the empirical distribution is 1 but must be 2 or more",
                () -> new Empirical(List.of(1.0)));
    }
}
