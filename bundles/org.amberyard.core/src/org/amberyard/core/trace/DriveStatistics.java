package org.amberyard.core.trace;

import org.amberyard.core.duty.SpeedTrace;

/**
 * What is usually told of a drive.
 *
 * @param lengthM distance, m
 * @param durationS time from start to end, standing included, s
 * @param meanSpeedMps length over duration, m/s
 * @param maxSpeedMps highest speed, m/s
 * @param idleShare share of the time in which the bus stands
 * @param stops how often it comes to rest, the end included
 * @param climbM sum of all rises, m
 * @param meanAccelerationMps2 mean over the time in which the speed rises, m/s²; 0 when it never does
 */
public record DriveStatistics(double lengthM, double durationS, double meanSpeedMps, double maxSpeedMps, double idleShare,
        int stops, double climbM, double meanAccelerationMps2) {

    /** Statistics of a trace. */
    public static DriveStatistics of(SpeedTrace trace) {
        double idleS = 0;
        double risingS = 0;
        double gainedMps = 0;
        double maxMps = trace.speedMps(0);
        double climbM = 0;
        int stops = 0;
        for (int i = 0; i < trace.steps(); i++) {
            double gain = trace.speedMps(i + 1) - trace.speedMps(i);
            idleS += trace.meanSpeedMps(i) == 0 ? trace.durationS(i) : 0;
            risingS += gain > 0 ? trace.durationS(i) : 0;
            gainedMps += Math.max(0, gain);
            maxMps = Math.max(maxMps, trace.speedMps(i + 1));
            climbM += Math.max(0, riseM(trace, i));
            stops += trace.speedMps(i) > 0 && trace.speedMps(i + 1) == 0 ? 1 : 0;
        }
        double lengthM = trace.distanceM();
        return new DriveStatistics(lengthM, trace.totalS(), lengthM / trace.totalS(), maxMps, idleS / trace.totalS(), stops,
                climbM, risingS > 0 ? gainedMps / risingS : 0);
    }

    private static double riseM(SpeedTrace trace, int step) {
        double grade = trace.grade(step);
        return trace.meanSpeedMps(step) * trace.durationS(step) * grade / Math.sqrt(1 + grade * grade);
    }
}
