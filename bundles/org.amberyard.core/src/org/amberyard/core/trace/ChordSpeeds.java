package org.amberyard.core.trace;

import java.util.ArrayList;
import java.util.List;

/**
 * Steps between positions that lie several seconds apart: each step is as long as the great circle between its ends. At a
 * point speed is the harmonic mean of the mean speeds before and after, and 0 beside a step without movement, so that the
 * distance never runs back (F. N. Fritsch and J. Butland, "A method for constructing local monotone piecewise cubic
 * interpolants", SIAM Journal on Scientific and Statistical Computing 5, 1984, from memory).
 */
final class ChordSpeeds implements SpeedSource {
    /** Points so sparse do not tell their scatter; that of a usual receiver, m. */
    private static final double USUAL_SCATTER_M = 1;

    @Override
    public double halfWidthS() {
        return 0;
    }

    @Override
    public double positionScatterM() {
        return USUAL_SCATTER_M;
    }

    @Override
    public List<PathStep> steps(List<TrackPoint> points) {
        double[] meanMps = new double[Math.max(0, points.size() - 1)];
        for (int i = 0; i < meanMps.length; i++) {
            meanMps[i] = GreatCircle.distanceM(points.get(i), points.get(i + 1))
                    / (points.get(i + 1).timeS() - points.get(i).timeS());
        }
        List<PathStep> steps = new ArrayList<>();
        for (int i = 0; i < meanMps.length; i++) {
            double startS = points.get(i).timeS();
            double endS = points.get(i + 1).timeS();
            double startMps = between(meanMps[Math.max(0, i - 1)], meanMps[i]);
            double endMps = between(meanMps[i], meanMps[Math.min(meanMps.length - 1, i + 1)]);
            steps.add(new PathStep(startS, endS, meanMps[i] * (endS - startS), startMps, endMps));
        }
        return steps;
    }

    private static double between(double beforeMps, double afterMps) {
        return beforeMps <= 0 || afterMps <= 0 ? 0 : 2 * beforeMps * afterMps / (beforeMps + afterMps);
    }
}
