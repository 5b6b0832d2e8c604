package org.amberyard.core.duty;

/**
 * How much of the braking power a motor takes up; the rest wears the friction brakes.
 *
 * @param powerLimitKw largest mechanical power taken from the wheels, kW
 * @param cutoffKmh speed below which only the friction brakes act, km/h
 * @param efficiency energy into the battery over mechanical energy taken
 */
public record BrakeRecovery(double powerLimitKw, double cutoffKmh, double efficiency) {

    /** A vehicle that recovers nothing. */
    public static final BrakeRecovery NONE = new BrakeRecovery(0, 0, 0);

    /** Power taken by the motor, W, of a braking power at a speed. */
    double takenW(double brakingW, double speedMps) {
        return speedMps * 3.6 < cutoffKmh ? 0 : Math.min(brakingW, powerLimitKw * 1000);
    }
}
