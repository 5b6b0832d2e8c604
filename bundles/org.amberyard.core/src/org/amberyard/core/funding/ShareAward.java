package org.amberyard.core.funding;

/**
 * A share of the cost of a site work or of training and tools.
 *
 * @param share share of the cost
 * @param cap most that is paid for each; infinite for none
 */
public record ShareAward(double share, double cap) {

    /** Pays nothing. */
    public static final ShareAward NONE = new ShareAward(0, Double.POSITIVE_INFINITY);
}
