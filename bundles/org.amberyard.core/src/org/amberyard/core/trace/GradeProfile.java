package org.amberyard.core.trace;

import org.amberyard.core.duty.SpeedTrace;

/**
 * Grade of each step of a drive from the elevations of its points. Distance is measured along the road, so the rise over it
 * is the sine of the slope. No road is steeper than one in four; steeper steps are taken as that.
 */
public final class GradeProfile {
    /** Steepest grade, rise over run; steeper ones are errors of measurement. */
    public static final double STEEPEST = 0.25;

    private final double[] grade;
    private final int clipped;

    private GradeProfile(double[] grade, int clipped) {
        this.grade = grade;
        this.clipped = clipped;
    }

    /**
     * Grades between the points of a drive.
     *
     * @param timeS times of the points, s
     * @param speedMps speeds at the points, m/s
     * @param elevationM elevations of the points, m; empty for level ground
     */
    public static GradeProfile of(double[] timeS, double[] speedMps, double[] elevationM) {
        double[] grade = new double[timeS.length - 1];
        int clipped = 0;
        for (int i = 0; elevationM.length > 0 && i < grade.length; i++) {
            double lengthM = 0.5 * (speedMps[i] + speedMps[i + 1]) * (timeS[i + 1] - timeS[i]);
            double steep = lengthM > 0 ? ofSine((elevationM[i + 1] - elevationM[i]) / lengthM) : 0;
            grade[i] = Math.max(-STEEPEST, Math.min(STEEPEST, steep));
            clipped += grade[i] == steep ? 0 : 1;
        }
        return new GradeProfile(grade, clipped);
    }

    private static double ofSine(double sine) {
        return Math.abs(sine) < 1 ? sine / Math.sqrt(1 - sine * sine) : Math.copySign(Double.POSITIVE_INFINITY, sine);
    }

    /** Steps that were steeper than the steepest grade. */
    public int clipped() {
        return clipped;
    }

    /** The drive with these grades. */
    public SpeedTrace trace(double[] timeS, double[] speedMps) {
        return new SpeedTrace(timeS, speedMps, grade);
    }
}
