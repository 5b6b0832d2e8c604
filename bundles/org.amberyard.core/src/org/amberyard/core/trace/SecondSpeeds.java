package org.amberyard.core.trace;

import java.util.List;

/** Speeds at every full second from the first moment of a drive on. */
final class SecondSpeeds {
    private SecondSpeeds() {
    }

    /** @param steps steps that follow each other without a break */
    static double[] of(List<PathStep> steps) {
        double startS = steps.get(0).startS();
        int seconds = (int) Math.floor(steps.get(steps.size() - 1).endS() - startS + 1e-6);
        double[] speedMps = new double[seconds + 1];
        int step = 0;
        for (int second = 0; second <= seconds; second++) {
            while (step < steps.size() - 1 && steps.get(step).endS() <= startS + second) {
                step++;
            }
            double timeS = Math.min(startS + second, steps.get(step).endS());
            speedMps[second] = Math.max(0, steps.get(step).speedMps(timeS));
        }
        return speedMps;
    }
}
