package org.amberyard.core.duty;

/** Sums the road load over the steps of a trace. */
final class RoadLoadSum {
    private static final double J_PER_KWH = 3.6e6;
    private static final double W2S_PER_KW2H = 3.6e9;

    private final RoadLoad load;
    private final MotorBraking braking;
    private final DrivelineLoss driveline;

    RoadLoadSum(RoadLoad load, DrivelineLoss driveline, BrakeRecovery recovery, double terminalLimitKw) {
        this.load = load;
        this.driveline = driveline;
        this.braking = new MotorBraking(recovery, driveline, load.inertiaN(recovery.decelerationMps2()), terminalLimitKw * 1000);
    }

    /**
     * One loop over local figures: this is where a study's time goes, and sums in fields cost half as much again. The road load
     * is linear in cosine, sine, square of the speed and acceleration, so its forces for one of each are enough.
     *
     * @param mostBrakingN by step, see {@link VehicleRun}
     */
    TractiveWork over(TraceSteps steps, double[] mostBrakingN) {
        double rollingN = load.rollingN(1);
        double climbingN = load.climbingN(1);
        double dragN = load.dragN(1);
        double inertiaN = load.inertiaN(1);
        double drawnJ = 0;
        double recoveredJ = 0;
        double squareW2s = 0;
        double rollingJ = 0;
        double dragJ = 0;
        double climbingJ = 0;
        double frictionJ = 0;
        double drivelineJ = 0;
        double leastW = 0;
        for (int step = 0; step < steps.count; step++) {
            double seconds = steps.seconds[step];
            double speed = steps.speedMps[step];
            double metres = speed * seconds;
            double rolling = rollingN * steps.cosine[step];
            double climbing = climbingN * steps.sine[step];
            double drag = dragN * speed * speed;
            double force = rolling + climbing + drag + inertiaN * steps.accelerationMps2[step];
            double motorN = force >= 0 ? force : -braking.takenN(-force, mostBrakingN[step], speed);
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
                leastW = Math.min(leastW, terminalW);
            }
        }
        return new TractiveWork(drawnJ / J_PER_KWH, recoveredJ / J_PER_KWH, squareW2s / W2S_PER_KW2H, rollingJ / J_PER_KWH,
                dragJ / J_PER_KWH, climbingJ / J_PER_KWH, frictionJ / J_PER_KWH, drivelineJ / J_PER_KWH, -leastW / 1000);
    }
}
