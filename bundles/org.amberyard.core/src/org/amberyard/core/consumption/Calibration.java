package org.amberyard.core.consumption;

import java.util.List;
import java.util.Optional;
import org.amberyard.core.math.Checks;
import org.apache.commons.math3.distribution.TDistribution;

/**
 * How far a model is off what was measured, and the factor that puts it right: the sum measured over the sum modelled.
 *
 * <p>This is the ratio estimator, with the standard error of a large population and Student's t with one degree of freedom
 * less than there are pairs: Cochran, "Sampling Techniques", 3rd ed. 1977, chapter 6 (from memory).
 *
 * @param factor measured over modelled
 * @param interval95 where the factor lies with 95 % confidence; empty for a single pair, which says nothing of the scatter
 * @param pairs number of pairs
 */
public record Calibration(double factor, Optional<Interval> interval95, int pairs) {
    private static final double UPPER_QUANTILE = 0.975;
    /** Beyond this, model or measurement should be looked at before either is believed; common practice, no source. */
    private static final double SUSPICIOUS_SHARE = 0.25;

    /**
     * One measurement beside what the model says for the same driving.
     *
     * @param measured energy in kWh or fuel in L; above 0
     * @param modelled the same by the model; above 0
     */
    public record Pair(double measured, double modelled) {

        /** @throws IllegalArgumentException when an amount is not above zero */
        public Pair {
            Checks.positive("Measured energy or fuel", measured);
            Checks.positive("Modelled energy or fuel", modelled);
        }
    }

    /**
     * Calibrates by pairs of one unit.
     *
     * @throws IllegalArgumentException when there is no pair
     */
    public static Calibration of(List<Pair> pairs) {
        if (pairs.isEmpty()) {
            throw new IllegalArgumentException(
                    "A calibration needs at least 1 pair of measured and modelled energy but has 0");
        }
        double modelled = pairs.stream().mapToDouble(Pair::modelled).sum();
        double factor = pairs.stream().mapToDouble(Pair::measured).sum() / modelled;
        return new Calibration(factor, interval(pairs, factor, modelled), pairs.size());
    }

    private static Optional<Interval> interval(List<Pair> pairs, double factor, double modelledSum) {
        int freedom = pairs.size() - 1;
        if (freedom == 0) {
            return Optional.empty();
        }
        double squares = pairs.stream().mapToDouble(p -> Math.pow(p.measured() - factor * p.modelled(), 2)).sum();
        double standardError = Math.sqrt(pairs.size() * squares / freedom) / modelledSum;
        double student = new TDistribution(freedom).inverseCumulativeProbability(UPPER_QUANTILE);
        return Optional.of(Interval.around(factor, student * standardError));
    }

    /** How much the model says too much (positive) or too little (negative), as a share of what was measured. */
    public double rawErrorShare() {
        return 1 / factor - 1;
    }

    /** True when the model is more than 25 % off. */
    public boolean isSuspicious() {
        return Math.abs(rawErrorShare()) > SUSPICIOUS_SHARE;
    }
}
