package org.amberyard.core.duty;

import org.amberyard.core.math.Checks;

/**
 * Losses of motor, inverter and gears by load: {@code loss = c₀ + c₁·v + c₃·v³ + g·|F|·v + k·F²} at wheel speed v and motor
 * force F, so that efficiency is a surface over load and speed and not one constant.
 *
 * <p>The form is that of the electric vehicle textbooks: copper loss with the square of the torque, iron loss with speed,
 * windage with its cube, a constant for the controller (J. Larminie, J. Lowry, "Electric Vehicle Technology Explained", Wiley
 * 2003, section on motor efficiency, from memory); gears lose a share of what they carry.
 *
 * @param constantW loss at any speed while moving, W
 * @param perSpeedN iron loss per speed, W/(m/s)
 * @param perCubedSpeed windage loss per cube of the speed, W/(m/s)³
 * @param gearShare share of the power carried that the gears lose
 * @param copperWPerN2 copper loss per square of the force, W/N²
 */
public record DrivelineLoss(double constantW, double perSpeedN, double perCubedSpeed, double gearShare,
        double copperWPerN2) {

    /** How the loss at the rating point divides; common practice for a traction motor with one reduction, no source. */
    private static final double CONSTANT = 0.06;
    private static final double IRON = 0.15;
    private static final double WINDAGE = 0.04;
    private static final double GEARS = 0.35;
    private static final double COPPER = 0.40;

    /**
     * The surface of an electric driveline through its rating point.
     *
     * @param efficiency wheel power over terminal power at the rating point, above 0 to 1
     * @param powerKw continuous power at the wheels, kW
     * @param speedKmh speed at which that power meets the largest continuous force, km/h
     */
    public static DrivelineLoss electric(double efficiency, double powerKw, double speedKmh) {
        double powerW = Checks.positive("Motor power (kW)", powerKw) * 1000;
        double speed = speedKmh / 3.6;
        double force = powerW / speed;
        double lossW = powerW * (1 / Checks.positive("Driveline efficiency", efficiency) - 1);
        return new DrivelineLoss(CONSTANT * lossW, IRON * lossW / speed, WINDAGE * lossW / (speed * speed * speed),
                GEARS * lossW / powerW, COPPER * lossW / (force * force));
    }

    /** A mechanical driveline that loses a share of what it carries (common practice for gearbox and axle, no source). */
    public static DrivelineLoss mechanical(double efficiency) {
        return new DrivelineLoss(0, 0, 0, 1 / efficiency - 1, 0);
    }

    /** Loss at a speed and a force of either sign, W. */
    public double lossW(double speedMps, double forceN) {
        return constantW + speedMps * (perSpeedN + perCubedSpeed * speedMps * speedMps + gearShare * Math.abs(forceN))
                + copperWPerN2 * forceN * forceN;
    }

    /** Braking force beyond which the motor would give back less for more, N; no controller goes there. */
    double mostUsefulBrakingN(double speedMps) {
        return copperWPerN2 > 0 ? Math.max(0, speedMps * (1 - gearShare) / (2 * copperWPerN2)) : Double.MAX_VALUE;
    }

    /** Least braking force that brings a power back at the terminals, N; there must be one. */
    double brakingN(double speedMps, double terminalW) {
        double linear = speedMps * (1 - gearShare);
        double needed = terminalW + lossW(speedMps, 0);
        return copperWPerN2 > 0
                ? 2 * needed / (linear + Math.sqrt(Math.max(0, linear * linear - 4 * copperWPerN2 * needed))) : needed / linear;
    }
}
