package org.amberyard.core.duty;

/**
 * How a driver drives, from smooth to hurried. Style acts through accelerations and speeds alone: energy, recovery and brake
 * wear follow from physics.
 *
 * <p>Between the ends accelerations change threefold and cruising speed by a tenth (common practice, no source).
 *
 * @param accelerationMps2 acceleration from a stop, m/s², positive
 * @param decelerationMps2 deceleration to a stop, m/s², positive
 * @param speedFactor cruising speed over the speed that the roads allow
 */
public record DriverStyle(double accelerationMps2, double decelerationMps2, double speedFactor) {
    private static final double ACCELERATION_SPREAD = 3;
    private static final double SPEED_SPREAD = 0.1;

    /**
     * A style.
     *
     * @param accelerationMps2 acceleration of an ordinary driver, m/s²
     * @param decelerationMps2 deceleration of an ordinary driver, m/s²
     * @param hurry 0 for smooth, 0.5 for ordinary, 1 for hurried
     */
    public static DriverStyle of(double accelerationMps2, double decelerationMps2, double hurry) {
        double factor = Math.pow(ACCELERATION_SPREAD, hurry - 0.5);
        return new DriverStyle(accelerationMps2 * factor, decelerationMps2 * factor, 1 + SPEED_SPREAD * (hurry - 0.5));
    }
}
