package org.amberyard.core.upkeep;

import org.amberyard.core.math.Checks;
import org.apache.commons.math3.special.Gamma;

/**
 * Random failures of a part that is renewed at each failure, its life spread by a Weibull distribution: the expected number of
 * failures, not a roll of dice.
 *
 * <p>The renewal equation M(t) = F(t) + ∫ M(t − s) dF(s) is solved step by step by the midpoint rule of Xie, "On the solution of
 * renewal-type integral equations", Communications in Statistics, Simulation and Computation 18 (1989), 281–293 (from memory).
 * With shape 1 failures come by chance alone and M(t) = t / mean exactly.
 */
public final class WeibullRenewal {
    /** Steps per characteristic life; halving the step moves the count by less than 0.1 %. */
    private static final int STEPS_PER_LIFE = 100;
    private static final int MOST_STEPS = 4000;

    private final double shape;
    private final double life;
    private final double meanLife;
    private final double step;
    private final double[] count;

    /**
     * The law of one part.
     *
     * @param shape Weibull shape: 1 for chance, above 1 for wear-out
     * @param meanLife mean life, km or any other unit of age
     * @param longestAge greatest age that will be asked for, in the same unit
     * @throws IllegalArgumentException when one of them is not above zero
     */
    public WeibullRenewal(double shape, double meanLife, double longestAge) {
        this.shape = Checks.positive("Weibull shape", shape);
        this.meanLife = Checks.positive("Mean life", meanLife);
        this.life = meanLife / Gamma.gamma(1 + 1 / shape);
        int steps = (int) Math.ceil(Math.min(MOST_STEPS,
                Math.max(STEPS_PER_LIFE, Checks.positive("Longest age", longestAge) / life * STEPS_PER_LIFE)));
        this.step = longestAge / steps;
        this.count = shape == 1 ? new double[0] : solve(steps);
    }

    private double[] solve(int steps) {
        double[] failed = new double[2 * steps + 1];
        for (int half = 0; half < failed.length; half++) {
            failed[half] = -Math.expm1(-Math.pow(half * step / 2 / life, shape));
        }
        double[] m = new double[steps + 1];
        double[] rise = new double[steps + 1];
        for (int i = 1; i <= steps; i++) {
            double sum = failed[2 * i] - m[i - 1] * failed[1];
            for (int j = 1; j < i; j++) {
                sum += rise[j] * failed[2 * (i - j) + 1];
            }
            m[i] = sum / (1 - failed[1]);
            rise[i] = m[i] - m[i - 1];
        }
        return m;
    }

    /** Expected failures from new to an age; in a straight line at the long-run rate beyond the longest age. */
    public double expected(double age) {
        if (count.length == 0) {
            return age / meanLife;
        }
        int last = count.length - 1;
        if (age >= last * step) {
            return count[last] + (age - last * step) / meanLife;
        }
        int below = Math.min(last - 1, (int) (age / step));
        double part = age / step - below;
        return count[below] + part * (count[below + 1] - count[below]);
    }

    /** Expected failures between two ages of the bus; parts of a stretch add up to the whole. */
    public double expected(double fromAge, double toAge) {
        return expected(toAge) - expected(fromAge);
    }

    /** Variance of the number of failures between two ages: Var N = E + 2 ∫ M(to − u) dM(u) − E². */
    public double variance(double fromAge, double toAge) {
        double mean = expected(fromAge, toAge);
        int steps = (int) Math.ceil(Math.max(1, (toAge - fromAge) / step));
        double width = (toAge - fromAge) / steps;
        double pairs = 0;
        for (int i = 0; i < steps; i++) {
            double at = fromAge + i * width;
            pairs += expected(at, at + width) * expected(toAge - at - width / 2);
        }
        return mean + 2 * pairs - mean * mean;
    }
}
