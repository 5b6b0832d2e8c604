package org.amberyard.core.duty;

/**
 * Work of one drive that starts and ends at rest, at the wheels and at the terminals of the battery (or, with an engine, at
 * the crankshaft), found by summing the road load over the steps of its trace.
 *
 * <p>In each step the force acts at the mean speed of the step, so that the kinetic terms cancel exactly:
 * {@code drawn − recovered = rolling + drag + climbing + friction brakes + driveline loss}.
 *
 * @param drawnKwh energy drawn at the terminals for driving, kWh
 * @param recoveredKwh braking energy that reaches the terminals, kWh
 * @param squareKw2h integral of the square of the terminal power, kW²h, for the resistance loss of the pack
 * @param rollingKwh work against rolling resistance, kWh
 * @param dragKwh work against air drag, kWh
 * @param climbingKwh work against gravity, kWh; zero where the drive ends as high as it began
 * @param frictionBrakeKwh braking work left to the friction brakes, kWh
 * @param drivelineKwh losses of motor and gears, kWh
 * @param peakBrakingKw largest braking power that the motor was asked for, kW
 */
public record TractiveWork(double drawnKwh, double recoveredKwh, double squareKw2h, double rollingKwh, double dragKwh,
        double climbingKwh, double frictionBrakeKwh, double drivelineKwh, double peakBrakingKw) {

    private static final double J_PER_KWH = 3.6e6;
    private static final double W2S_PER_KW2H = 3.6e9;

    /** Sums the road load over a trace at rest at both ends. */
    public static TractiveWork of(SpeedTrace trace, RoadLoad load, DrivelineLoss driveline, BrakeRecovery recovery) {
        return of(new TraceSteps(trace), load, driveline, recovery, recovery.powerLimitKw());
    }

    /** The same with another limit on the braking power, kW. */
    static TractiveWork of(TraceSteps steps, RoadLoad load, DrivelineLoss driveline, BrakeRecovery recovery,
            double limitKw) {
        Sum sum = new Sum(load, driveline, recovery, limitKw);
        for (int step = 0; step < steps.count; step++) {
            sum.add(steps.seconds[step], steps.speedMps[step], steps.accelerationMps2[step], steps.cosine[step],
                    steps.sine[step]);
        }
        return sum.work();
    }

    /** Running sums; factors that do not change from step to step stand in fields. */
    private static final class Sum {
        private final double weightN;
        private final double rollingN;
        private final double inertiaKg;
        private final double dragNPerSpeed2;
        private final DrivelineLoss driveline;
        private final double limitW;
        private final double cutoffMps;
        private final double brakingLimitN;
        private double drawnJ;
        private double recoveredJ;
        private double squareW2s;
        private double rollingJ;
        private double dragJ;
        private double climbingJ;
        private double frictionJ;
        private double drivelineJ;
        private double peakW;

        Sum(RoadLoad load, DrivelineLoss driveline, BrakeRecovery recovery, double limitKw) {
            this.weightN = load.massKg() * RoadLoad.GRAVITY;
            this.rollingN = load.rollingResistance() * weightN;
            this.inertiaKg = load.rotatingMassFactor() * load.massKg();
            this.dragNPerSpeed2 = load.dragN(1);
            this.driveline = driveline;
            this.limitW = limitKw * 1000;
            this.cutoffMps = recovery.cutoffKmh() / 3.6;
            this.brakingLimitN = inertiaKg * recovery.decelerationMps2();
        }

        void add(double seconds, double speed, double acceleration, double cosine, double sine) {
            double rolling = rollingN * cosine;
            double climbing = weightN * sine;
            double drag = dragNPerSpeed2 * speed * speed;
            double force = rolling + climbing + drag + inertiaKg * acceleration;
            double metres = speed * seconds;
            rollingJ += rolling * metres;
            climbingJ += climbing * metres;
            dragJ += drag * metres;
            double motorN = force >= 0 ? force : -taken(-force, speed);
            frictionJ += (motorN - force) * metres;
            double lossW = driveline.lossW(speed, motorN);
            double terminalW = motorN * speed + lossW;
            drivelineJ += lossW * seconds;
            squareW2s += terminalW * terminalW * seconds;
            if (terminalW >= 0) {
                drawnJ += terminalW * seconds;
            } else {
                recoveredJ -= terminalW * seconds;
            }
        }

        /** Braking force that the motor takes of the one asked for, N. */
        private double taken(double brakingN, double speed) {
            if (speed < cutoffMps) {
                return 0;
            }
            double useful = Math.min(Math.min(brakingN, brakingLimitN), driveline.mostUsefulBrakingN(speed));
            peakW = Math.max(peakW, useful * speed);
            return Math.min(useful, limitW / speed);
        }

        TractiveWork work() {
            return new TractiveWork(drawnJ / J_PER_KWH, recoveredJ / J_PER_KWH, squareW2s / W2S_PER_KW2H,
                    rollingJ / J_PER_KWH, dragJ / J_PER_KWH, climbingJ / J_PER_KWH, frictionJ / J_PER_KWH,
                    drivelineJ / J_PER_KWH, peakW / 1000);
        }
    }
}
