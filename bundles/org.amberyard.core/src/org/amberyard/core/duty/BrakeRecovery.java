package org.amberyard.core.duty;

/**
 * How much of the braking a motor takes up; the rest wears the friction brakes. What the battery takes in at its temperature
 * and state of charge limits it further, see {@link org.amberyard.core.battery.ChargeAcceptance}.
 *
 * @param powerLimitKw largest mechanical power taken from the wheels, kW
 * @param cutoffKmh speed below which only the friction brakes act, km/h
 * @param decelerationMps2 slowing that the motor alone can give; harder braking is shared with the friction brakes, m/s²
 */
public record BrakeRecovery(double powerLimitKw, double cutoffKmh, double decelerationMps2) {

    /** A vehicle that recovers nothing. */
    public static final BrakeRecovery NONE = new BrakeRecovery(0, 0, 0);
}
