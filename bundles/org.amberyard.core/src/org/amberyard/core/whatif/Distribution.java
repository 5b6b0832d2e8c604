package org.amberyard.core.whatif;

/**
 * What is held possible for an uncertain input, in the unit of the input. A draw is the {@link #quantile(double)} of a
 * number that is spread evenly between 0 and 1, so that ranks of inputs can be correlated whatever their distributions.
 */
public sealed interface Distribution permits Uniform, Triangular, Normal, TruncatedNormal, LogNormal,
        TruncatedLogNormal, Pert, Discrete, Empirical {

    /**
     * The value that a share of all cases does not exceed.
     *
     * @param share from 0 to 1; at the ends the limits of the distribution, infinite where it has none
     * @throws IllegalArgumentException when the share is not from 0 to 1
     */
    double quantile(double share);

    /** Mean of what is drawn. */
    double mean();

    /** Standard deviation of what is drawn. */
    double sd();
}
