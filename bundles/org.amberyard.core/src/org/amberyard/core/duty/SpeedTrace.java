package org.amberyard.core.duty;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Speed and grade of a drive over time, in steps of any length. Between two points speed changes evenly.
 *
 * <p>Immutable. A trace of {@code n + 1} points has {@code n} steps; the grade belongs to the step.
 */
public final class SpeedTrace {
    private final double[] timeS;
    private final double[] speedMps;
    private final double[] grade;

    /**
     * @param timeS times of the points in s, rising strictly
     * @param speedMps speeds at the points in m/s, not negative
     * @param grade rise over run in each step, one fewer than the points
     * @throws IllegalArgumentException when lengths do not match, times do not rise or a speed is negative
     */
    public SpeedTrace(double[] timeS, double[] speedMps, double[] grade) {
        if (timeS.length < 2 || speedMps.length != timeS.length || grade.length != timeS.length - 1) {
            throw new IllegalArgumentException("A trace needs at least two points, a speed for each and a grade for each step");
        }
        for (int i = 0; i < timeS.length; i++) {
            if (!(speedMps[i] >= 0) || i > 0 && !(timeS[i] > timeS[i - 1])) {
                throw new IllegalArgumentException("Point " + i + ": time must rise and speed must not be negative");
            }
        }
        this.timeS = timeS.clone();
        this.speedMps = speedMps.clone();
        this.grade = grade.clone();
    }

    /** A trace on level ground. */
    public static SpeedTrace level(double[] timeS, double[] speedMps) {
        return new SpeedTrace(timeS, speedMps, new double[timeS.length - 1]);
    }

    /** Number of steps. */
    public int steps() {
        return grade.length;
    }

    /** Time of a point, s; a trace has one point more than steps. */
    public double timeS(int point) {
        return timeS[point];
    }

    /** Speed at a point, m/s. */
    public double speedMps(int point) {
        return speedMps[point];
    }

    /** Length of a step, s. */
    public double durationS(int step) {
        return timeS[step + 1] - timeS[step];
    }

    /** Mean speed in a step, m/s. */
    public double meanSpeedMps(int step) {
        return 0.5 * (speedMps[step] + speedMps[step + 1]);
    }

    /** Acceleration in a step, m/s². */
    public double accelerationMps2(int step) {
        return (speedMps[step + 1] - speedMps[step]) / durationS(step);
    }

    /** Rise over run in a step. */
    public double grade(int step) {
        return grade[step];
    }

    /** Time from first to last point, s. */
    public double totalS() {
        return timeS[timeS.length - 1] - timeS[0];
    }

    /** Distance along the trace, m. */
    public double distanceM() {
        double sum = 0;
        for (int i = 0; i < steps(); i++) {
            sum += meanSpeedMps(i) * durationS(i);
        }
        return sum;
    }

    /**
     * The trace cut into drives that start and end at rest; time that the bus stands belongs to the drive before it.
     *
     * @throws IllegalArgumentException when the trace does not move, or not start and end at rest
     */
    public List<SpeedTrace> cutAtRest() {
        if (speedMps[0] > 0 || speedMps[steps()] > 0 || !(distanceM() > 0)) {
            throw new IllegalArgumentException("A drive trace must move and must start and end at rest");
        }
        List<SpeedTrace> pieces = new ArrayList<>();
        int from = 0;
        for (int point = 1; point < steps(); point++) {
            boolean setsOff = speedMps[point] == 0 && speedMps[point + 1] > 0;
            if (setsOff && hasMoved(from, point)) {
                pieces.add(part(from, point));
                from = point;
            }
        }
        pieces.add(part(from, steps()));
        return pieces;
    }

    private boolean hasMoved(int from, int to) {
        for (int point = from; point <= to; point++) {
            if (speedMps[point] > 0) {
                return true;
            }
        }
        return false;
    }

    private SpeedTrace part(int from, int to) {
        return new SpeedTrace(Arrays.copyOfRange(timeS, from, to + 1), Arrays.copyOfRange(speedMps, from, to + 1),
                Arrays.copyOfRange(grade, from, to));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof SpeedTrace that && Arrays.equals(timeS, that.timeS)
                && Arrays.equals(speedMps, that.speedMps) && Arrays.equals(grade, that.grade);
    }

    @Override
    public int hashCode() {
        return 31 * (31 * Arrays.hashCode(timeS) + Arrays.hashCode(speedMps)) + Arrays.hashCode(grade);
    }
}
