package org.amberyard.core.trace;

import java.util.ArrayList;
import java.util.List;

/**
 * Steps between points that bear speeds.
 *
 * <p>Speeds that are given to the third digit are taken as they are, because every smoothing takes work off a lively drive:
 * a published schedule stays what it is. Where they are 0 for a good part of the time, they tell by themselves when the bus
 * stands. Where they scatter by more than an eighth of a metre per second, as those of a
 * cheap receiver do, a cubic is fitted over a window that grows with the scatter.
 */
final class GivenSpeeds implements SpeedSource {
    /** More than rounding to whole kilometres per hour or the liveliest schedule shows, m/s; by trial. */
    private static final double CLEAN_MPS = 0.125;
    private static final double WIDEST_S = 6;

    /** Schedules, and loggers that know when the wheels stand, have more zeros than that; by trial. */
    private static final double FEWEST_ZEROS = 0.02;

    private final double scatterMps;
    private final boolean tellsRest;

    GivenSpeeds(List<TrackPoint> points, double scatterMps) {
        this.scatterMps = scatterMps;
        this.tellsRest = points.stream().filter(p -> p.speedMps() == 0).count() > FEWEST_ZEROS * points.size();
    }

    /**
     * Half of the window over which speeds are fitted, s; 0 for speeds that are taken as they are. By trial with made drives
     * whose speeds were made to scatter: it kept their wheel work best.
     */
    @Override
    public double halfWidthS() {
        return scatterMps <= CLEAN_MPS ? 0 : Math.min(WIDEST_S, Math.rint(6.5 * Math.pow(scatterMps, 0.3)));
    }

    @Override
    public double positionScatterM() {
        return 0;
    }

    @Override
    public double standingBelowMps() {
        return halfWidthS() == 0 && tellsRest ? 0 : Standing.limitMps(0);
    }

    @Override
    public List<PathStep> steps(List<TrackPoint> points) {
        double[] timeS = points.stream().mapToDouble(TrackPoint::timeS).toArray();
        double[] speedMps = smoothed(timeS, points.stream().mapToDouble(TrackPoint::speedMps).toArray());
        List<PathStep> steps = new ArrayList<>();
        for (int i = 1; i < timeS.length; i++) {
            steps.add(PathStep.even(timeS[i - 1], timeS[i], speedMps[i - 1], speedMps[i]));
        }
        return steps;
    }

    private double[] smoothed(double[] timeS, double[] speedMps) {
        if (halfWidthS() == 0) {
            return speedMps;
        }
        LocalFit fit = new LocalFit(timeS, speedMps, halfWidthS());
        double[] smoothed = new double[speedMps.length];
        for (int i = 0; i < smoothed.length; i++) {
            smoothed[i] = Math.max(0, fit.fit(i).value());
        }
        return smoothed;
    }
}
