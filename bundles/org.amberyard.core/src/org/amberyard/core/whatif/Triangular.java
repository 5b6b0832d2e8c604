package org.amberyard.core.whatif;

import org.amberyard.core.math.Checks;

/**
 * Between two limits, likelihood rising in a straight line to a value and falling in a straight line from it.
 *
 * @param low lower limit
 * @param mode most likely value, a limit or between the limits
 * @param high upper limit, above the lower
 */
public record Triangular(double low, double mode, double high) implements Distribution {

    public Triangular {
        Checks.finite("Lower limit of the triangular distribution", low);
        Checks.above("Upper limit of the triangular distribution", high, low);
        Checks.within("Most likely value of the triangular distribution", mode, low, high);
    }

    @Override
    public double quantile(double share) {
        Checks.within("Share", share, 0, 1);
        double rising = (mode - low) / (high - low);
        return share < rising ? low + Math.sqrt(share * (high - low) * (mode - low))
                : high - Math.sqrt((1 - share) * (high - low) * (high - mode));
    }

    @Override
    public double mean() {
        return (low + mode + high) / 3;
    }

    @Override
    public double sd() {
        double below = mode - low;
        double above = high - mode;
        return Math.sqrt((below * below + below * above + above * above) / 18);
    }
}
