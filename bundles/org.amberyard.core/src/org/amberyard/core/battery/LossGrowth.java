package org.amberyard.core.battery;

/**
 * A loss that grows as a power of time or of throughput, slower as it goes on.
 *
 * <p>Years of different stress add up by the equivalent-time rule: the loss so far is taken as if the present stress had made
 * it, and goes on from there. For loss = k·t^z the amounts k^(1/z)·t add up, whatever their order, so a year may be split into
 * parts and nothing changes (common practice, no source; the published fits are for constant stress).
 *
 * @param exponent power of time, z; above 0
 * @param perYear sum of k^(1/z)·t over a year's stress
 */
public record LossGrowth(double exponent, double perYear) {

    /** Loss after a time that starts with a loss. */
    public double after(double loss, double years) {
        return Math.pow(Math.pow(loss, 1 / exponent) + perYear * years, exponent);
    }

    LossGrowth times(double factor) {
        return new LossGrowth(exponent, factor * perYear);
    }
}
