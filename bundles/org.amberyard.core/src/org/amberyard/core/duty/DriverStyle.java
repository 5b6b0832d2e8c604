package org.amberyard.core.duty;

/**
 * How hard a driver accelerates and brakes.
 *
 * @param accelerationMps2 acceleration from a stop, m/s², positive
 * @param decelerationMps2 deceleration to a stop, m/s², positive
 */
public record DriverStyle(double accelerationMps2, double decelerationMps2) {
}
