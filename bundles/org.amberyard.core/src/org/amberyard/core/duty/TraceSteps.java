package org.amberyard.core.duty;

/**
 * A trace as flat arrays of its moving steps: what the road load needs that depends on neither mass nor weather, worked out
 * once and driven many times.
 */
final class TraceSteps {
    final int count;
    final double[] seconds;
    final double[] speedMps;
    final double[] accelerationMps2;
    final double[] cosine;
    final double[] sine;
    final double totalHours;

    TraceSteps(SpeedTrace trace) {
        seconds = new double[trace.steps()];
        speedMps = new double[trace.steps()];
        accelerationMps2 = new double[trace.steps()];
        cosine = new double[trace.steps()];
        sine = new double[trace.steps()];
        int moving = 0;
        for (int step = 0; step < trace.steps(); step++) {
            if (trace.meanSpeedMps(step) > 0) {
                take(trace, step, moving++);
            }
        }
        count = moving;
        totalHours = trace.totalS() / 3600;
    }

    private void take(SpeedTrace trace, int step, int place) {
        double grade = trace.grade(step);
        seconds[place] = trace.durationS(step);
        speedMps[place] = trace.meanSpeedMps(step);
        accelerationMps2[place] = trace.accelerationMps2(step);
        cosine[place] = 1 / Math.sqrt(1 + grade * grade);
        sine[place] = grade * cosine[place];
    }
}
