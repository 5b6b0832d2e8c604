package org.amberyard.core.duty;

/**
 * How much of a braking force the motor takes: no more than its power and the slowing that it alone can give, no more than
 * pays, and no more than the battery takes in at the terminals.
 */
final class MotorBraking {
    private final DrivelineLoss driveline;
    private final double cutoffMps;
    private final double wheelLimitW;
    private final double forceLimitN;
    private final double terminalLimitW;

    /**
     * @param recovery limits of the motor
     * @param driveline losses
     * @param forceLimitN force that gives the slowing that the motor alone can give, N
     * @param terminalLimitW power that may come back at the terminals, W
     */
    MotorBraking(BrakeRecovery recovery, DrivelineLoss driveline, double forceLimitN, double terminalLimitW) {
        this.driveline = driveline;
        this.cutoffMps = recovery.cutoffKmh() / 3.6;
        this.wheelLimitW = recovery.powerLimitKw() * 1000;
        this.forceLimitN = forceLimitN;
        this.terminalLimitW = terminalLimitW;
    }

    /** Most force that the motor takes at a speed, whatever the battery takes in, N. */
    double mostN(double speedMps) {
        return speedMps < cutoffMps ? 0
                : Math.min(forceLimitN, Math.min(wheelLimitW / speedMps, driveline.mostUsefulBrakingN(speedMps)));
    }

    /**
     * Force taken of one asked for, both positive, N.
     *
     * @param mostN most that it takes at the speed
     */
    double takenN(double askedN, double mostN, double speedMps) {
        if (mostN == 0) {
            return 0;
        }
        double taken = Math.min(askedN, mostN);
        if (taken * speedMps <= terminalLimitW || taken * speedMps - driveline.lossW(speedMps, taken) <= terminalLimitW) {
            return taken;
        }
        return driveline.brakingN(speedMps, terminalLimitW);
    }
}
