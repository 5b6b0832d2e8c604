package org.amberyard.core.whatif;

import java.util.List;
import org.amberyard.core.math.Checks;

/**
 * What was observed, values between neighbouring observations included: a quantile is interpolated in a straight line
 * between the observations of the ranks around it, the smallest at share 0 and the largest at share 1. This is type 7
 * of Hyndman and Fan, "Sample quantiles in statistical packages", The American Statistician 50 (1996), 361–365 (from
 * memory).
 *
 * <p>Mean and deviation are those of what is drawn, which weighs the two outermost observations half.
 *
 * @param observed observations in rising order, two or more
 */
public record Empirical(List<Double> observed) implements Distribution {

    /** Sorts the observations. */
    public Empirical {
        Checks.atLeast("Number of observations of the empirical distribution", observed.size(), 2);
        observed.forEach(o -> Checks.finite("Observation of the empirical distribution", o));
        observed = observed.stream().sorted().toList();
    }

    @Override
    public double quantile(double share) {
        Checks.within("Share", share, 0, 1);
        double rank = share * steps();
        int below = Math.min((int) rank, steps() - 1);
        double part = rank - below;
        return observed.get(below) * (1 - part) + observed.get(below + 1) * part;
    }

    private int steps() {
        return observed.size() - 1;
    }

    @Override
    public double mean() {
        double sum = 0;
        for (int i = 0; i < steps(); i++) {
            sum += (observed.get(i) + observed.get(i + 1)) / 2;
        }
        return sum / steps();
    }

    /** Mean square of a straight line between a and b is (a² + ab + b²) / 3. */
    @Override
    public double sd() {
        double mean = mean();
        double sum = 0;
        for (int i = 0; i < steps(); i++) {
            double a = observed.get(i) - mean;
            double b = observed.get(i + 1) - mean;
            sum += (a * a + a * b + b * b) / 3;
        }
        return Math.sqrt(sum / steps());
    }
}
