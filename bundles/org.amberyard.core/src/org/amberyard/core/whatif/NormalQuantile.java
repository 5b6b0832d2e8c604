package org.amberyard.core.whatif;

import org.apache.commons.math3.special.Erf;

/**
 * The standard normal distribution. Its quantile is algorithm AS 241, PPND16, of Wichura, "The percentage points of the
 * normal distribution", Applied Statistics 37 (1988), 477–484 (from memory, held against another implementation in the
 * tests), which keeps about 16 digits in both tails, where an inverse error function of 2p − 1 loses them.
 */
final class NormalQuantile {
    private static final double CENTRAL = 0.425;
    private static final double FAR = 5;
    private static final double[] CENTRE_TOP = {
        2.5090809287301226727e+3, 3.3430575583588128105e+4, 6.7265770927008700853e+4, 4.5921953931549871457e+4,
        1.3731693765509461125e+4, 1.9715909503065514427e+3, 1.3314166789178437745e+2, 3.3871328727963666080e+0};
    private static final double[] CENTRE_BOTTOM = {
        5.2264952788528545610e+3, 2.8729085735721942674e+4, 3.9307895800092710610e+4, 2.1213794301586595867e+4,
        5.3941960214247511077e+3, 6.8718700749205790830e+2, 4.2313330701600911252e+1, 1};
    private static final double[] TAIL_TOP = {
        7.74545014278341407640e-4, 2.27238449892691845833e-2, 2.41780725177450611770e-1, 1.27045825245236838258e+0,
        3.64784832476320460504e+0, 5.76949722146069140550e+0, 4.63033784615654529590e+0, 1.42343711074968357734e+0};
    private static final double[] TAIL_BOTTOM = {
        1.05075007164441684324e-9, 5.47593808499534494600e-4, 1.51986665636164571966e-2, 1.48103976427480074590e-1,
        6.89767334985100004550e-1, 1.67638483018380384940e+0, 2.05319162663775882187e+0, 1};
    private static final double[] FAR_TOP = {
        2.01033439929228813265e-7, 2.71155556874348757815e-5, 1.24266094738807843860e-3, 2.65321895265761230930e-2,
        2.96560571828504891230e-1, 1.78482653991729133580e+0, 5.46378491116411436990e+0, 6.65790464350110377720e+0};
    private static final double[] FAR_BOTTOM = {
        2.04426310338993978564e-15, 1.42151175831644588870e-7, 1.84631831751005468180e-5, 7.86869131145613259100e-4,
        1.48753612908506148525e-2, 1.36929880922735805310e-1, 5.99832206555887937690e-1, 1};

    private NormalQuantile() {
    }

    /** Standard deviations from the mean that a share of all cases does not exceed; infinite for 0 and 1. */
    static double of(double share) {
        double fromMiddle = share - 0.5;
        if (Math.abs(fromMiddle) <= CENTRAL) {
            double r = CENTRAL * CENTRAL - fromMiddle * fromMiddle;
            return fromMiddle * ratio(CENTRE_TOP, CENTRE_BOTTOM, r);
        }
        double tail = fromMiddle < 0 ? share : 1 - share;
        double size = tail == 0 ? Double.POSITIVE_INFINITY : tail(Math.sqrt(-Math.log(tail)));
        return fromMiddle < 0 ? -size : size;
    }

    private static double tail(double root) {
        return root <= FAR ? ratio(TAIL_TOP, TAIL_BOTTOM, root - 1.6) : ratio(FAR_TOP, FAR_BOTTOM, root - FAR);
    }

    private static double ratio(double[] top, double[] bottom, double at) {
        return polynomial(top, at) / polynomial(bottom, at);
    }

    private static double polynomial(double[] falling, double at) {
        double sum = 0;
        for (double coefficient : falling) {
            sum = sum * at + coefficient;
        }
        return sum;
    }

    /** Share of all cases below a number of standard deviations from the mean. */
    static double shareBelow(double deviations) {
        return Erf.erfc(-deviations / Math.sqrt(2)) / 2;
    }

    /** Likelihood per standard deviation; 0 at infinity. */
    static double density(double deviations) {
        return Math.exp(-deviations * deviations / 2) / Math.sqrt(2 * Math.PI);
    }
}
