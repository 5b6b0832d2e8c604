package org.amberyard.core.battery;

/**
 * Power that a pack takes in, by its temperature and state of charge: full when warm and not near full, falling evenly to
 * nothing in the cold, and tapering above a state of charge; common practice for lithium-ion packs, no source.
 *
 * @param fullPerHour largest power over nominal energy, 1/h
 * @param fullFromC pack temperature from which that power is taken, °C
 * @param noneBelowC pack temperature below which nothing is taken, °C
 * @param taperFromShare state of charge from which the power tapers
 */
public record ChargeAcceptance(double fullPerHour, double fullFromC, double noneBelowC, double taperFromShare) {

    /** What is left of the power when the pack is full; lets the last of the charge end. */
    private static final double LEAST_SHARE = 0.05;

    /** Power over nominal energy, 1/h. */
    public double perHour(double packC, double chargeShare) {
        return fullPerHour * warmShare(packC) * taperShare(chargeShare);
    }

    private double warmShare(double packC) {
        if (packC >= fullFromC) {
            return 1;
        }
        return packC <= noneBelowC ? 0 : (packC - noneBelowC) / (fullFromC - noneBelowC);
    }

    private double taperShare(double chargeShare) {
        if (chargeShare <= taperFromShare) {
            return 1;
        }
        double left = Math.max(0, 1 - chargeShare) / (1 - taperFromShare);
        return LEAST_SHARE + (1 - LEAST_SHARE) * left;
    }
}
