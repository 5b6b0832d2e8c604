package org.amberyard.core.math;

/** Student's distribution for whole degrees of freedom, by its finite series (Abramowitz and Stegun 26.7.3 and 26.7.4; from memory). */
public final class StudentT {
    private StudentT() {
    }

    /**
     * Chance of a value as far from zero as one or farther, to either side.
     *
     * @param t the value; infinite ones have no chance
     * @param freedom degrees of freedom, 1 or more
     */
    public static double chance(double t, int freedom) {
        if (Double.isInfinite(t)) {
            return 0;
        }
        double angle = Math.atan(Math.abs(t) / Math.sqrt(freedom));
        double sine = Math.sin(angle);
        double cosine = Math.cos(angle);
        double series = sine * series(cosine, freedom);
        double within = freedom % 2 == 0 ? series : 2 / Math.PI * (angle + cosine * series);
        return Math.max(0, 1 - within);
    }

    /** The sum of falling powers of the squared cosine; one of them less for each two degrees of freedom. */
    private static double series(double cosine, int freedom) {
        int odd = freedom % 2;
        double term = freedom == 1 ? 0 : 1;
        double sum = 0;
        for (int k = 2 + odd; k <= freedom; k += 2) {
            sum += term;
            term *= cosine * cosine * (k - 1) / k;
        }
        return sum;
    }
}
