package org.amberyard.core.duty;

/** Sums the road load over the steps of a trace; what does not change from step to step is worked out before. */
final class RoadLoadSum {
    private static final double J_PER_KWH = 3.6e6;
    private static final double W2S_PER_KW2H = 3.6e9;

    private final double weightN;
    private final double rollingN;
    private final double inertiaKg;
    private final double dragNPerSpeed2;
    private final DrivelineLoss driveline;
    private final double limitW;
    private final double cutoffMps;
    private final double brakingLimitN;

    RoadLoadSum(RoadLoad load, DrivelineLoss driveline, BrakeRecovery recovery, double limitKw) {
        this.weightN = load.massKg() * RoadLoad.GRAVITY;
        this.rollingN = load.rollingResistance() * weightN;
        this.inertiaKg = load.rotatingMassFactor() * load.massKg();
        this.dragNPerSpeed2 = load.dragN(1);
        this.driveline = driveline;
        this.limitW = limitKw * 1000;
        this.cutoffMps = recovery.cutoffKmh() / 3.6;
        this.brakingLimitN = inertiaKg * recovery.decelerationMps2();
    }

    /** One loop over local sums: this is where a study's time goes, and sums in fields cost half as much again. */
    TractiveWork over(TraceSteps steps) {
        double drawnJ = 0;
        double recoveredJ = 0;
        double squareW2s = 0;
        double rollingJ = 0;
        double dragJ = 0;
        double climbingJ = 0;
        double frictionJ = 0;
        double drivelineJ = 0;
        double peakW = 0;
        for (int step = 0; step < steps.count; step++) {
            double seconds = steps.seconds[step];
            double speed = steps.speedMps[step];
            double metres = speed * seconds;
            double rolling = rollingN * steps.cosine[step];
            double climbing = weightN * steps.sine[step];
            double drag = dragNPerSpeed2 * speed * speed;
            double force = rolling + climbing + drag + inertiaKg * steps.accelerationMps2[step];
            double motorN = force;
            if (force < 0) {
                double asked = askedN(-force, speed);
                peakW = Math.max(peakW, asked * speed);
                motorN = -Math.min(asked, limitW / speed);
            }
            double lossW = driveline.lossW(speed, motorN);
            double terminalW = motorN * speed + lossW;
            rollingJ += rolling * metres;
            climbingJ += climbing * metres;
            dragJ += drag * metres;
            frictionJ += (motorN - force) * metres;
            drivelineJ += lossW * seconds;
            squareW2s += terminalW * terminalW * seconds;
            if (terminalW >= 0) {
                drawnJ += terminalW * seconds;
            } else {
                recoveredJ -= terminalW * seconds;
            }
        }
        return new TractiveWork(drawnJ / J_PER_KWH, recoveredJ / J_PER_KWH, squareW2s / W2S_PER_KW2H, rollingJ / J_PER_KWH,
                dragJ / J_PER_KWH, climbingJ / J_PER_KWH, frictionJ / J_PER_KWH, drivelineJ / J_PER_KWH, peakW / 1000);
    }

    /** Braking force that the motor would take of a whole one but for the power limit, N. */
    private double askedN(double brakingN, double speed) {
        return speed < cutoffMps ? 0
                : Math.min(Math.min(brakingN, brakingLimitN), driveline.mostUsefulBrakingN(speed));
    }
}
