package org.amberyard.core.duty;

/**
 * Work at the wheels over a drive, found by summing the road load over the steps of its traces.
 *
 * <p>In each step the force acts at the mean speed of the step, so that the kinetic terms cancel exactly over a drive that
 * starts and ends at rest: {@code driving − braking = rolling + drag + climbing}.
 *
 * @param drivingKwh work that the driveline must deliver, kWh
 * @param recoverableKwh braking work that the motor can take up, kWh
 * @param frictionKwh braking work left to the friction brakes, kWh
 * @param rollingKwh work against rolling resistance, kWh
 * @param dragKwh work against air drag, kWh
 */
public record TractiveWork(double drivingKwh, double recoverableKwh, double frictionKwh, double rollingKwh,
        double dragKwh) {

    private static final double J_PER_KWH = 3.6e6;

    /** All braking work, kWh. */
    public double brakingKwh() {
        return recoverableKwh + frictionKwh;
    }

    /** Sums the road load over a drive, with what the motor can take up in braking. */
    public static TractiveWork of(DrivePattern drive, RoadLoad load, BrakeRecovery recovery) {
        Sum whole = new Sum();
        for (DrivePattern.Piece piece : drive.pieces()) {
            Sum once = new Sum();
            once.addTrace(piece.trace(), load, recovery);
            whole.add(once, piece.times());
        }
        return whole.toWork();
    }

    private static final class Sum {
        private double drivingJ;
        private double recoverableJ;
        private double frictionJ;
        private double rollingJ;
        private double dragJ;

        void addTrace(SpeedTrace trace, RoadLoad load, BrakeRecovery recovery) {
            for (int i = 0; i < trace.steps(); i++) {
                double speed = trace.meanSpeedMps(i);
                if (speed > 0) {
                    addStep(trace.durationS(i), speed, trace.accelerationMps2(i), trace.grade(i), load, recovery);
                }
            }
        }

        private void addStep(double seconds, double speed, double acceleration, double grade, RoadLoad load,
                BrakeRecovery recovery) {
            double rolling = load.rollingN(grade);
            double drag = load.dragN(speed);
            double powerW = load.forceN(speed, acceleration, grade) * speed;
            rollingJ += rolling * speed * seconds;
            dragJ += drag * speed * seconds;
            if (powerW >= 0) {
                drivingJ += powerW * seconds;
            } else {
                double taken = recovery.takenW(-powerW, speed);
                recoverableJ += taken * seconds;
                frictionJ += (-powerW - taken) * seconds;
            }
        }

        void add(Sum once, int times) {
            drivingJ += times * once.drivingJ;
            recoverableJ += times * once.recoverableJ;
            frictionJ += times * once.frictionJ;
            rollingJ += times * once.rollingJ;
            dragJ += times * once.dragJ;
        }

        TractiveWork toWork() {
            return new TractiveWork(drivingJ / J_PER_KWH, recoverableJ / J_PER_KWH, frictionJ / J_PER_KWH,
                    rollingJ / J_PER_KWH, dragJ / J_PER_KWH);
        }
    }
}
