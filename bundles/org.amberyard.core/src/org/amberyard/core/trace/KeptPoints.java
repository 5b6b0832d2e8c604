package org.amberyard.core.trace;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The points of a track that the drive is made from.
 *
 * @param points points kept
 * @param sameTime points left out because they bear the time of the one before
 * @param outliers points left out because no bus can have reached them
 * @param scatter usual error of what the speeds come from: speeds in m/s, or positions in m
 */
record KeptPoints(List<TrackPoint> points, int sameTime, int outliers, double scatter) {
    /** Points closer together are one moment, s. */
    private static final double SAME_TIME_S = 0.04;

    static KeptPoints of(Track track) {
        List<TrackPoint> apart = new ArrayList<>();
        for (TrackPoint point : track.points()) {
            if (apart.isEmpty() || point.timeS() - apart.get(apart.size() - 1).timeS() >= SAME_TIME_S) {
                apart.add(point);
            }
        }
        double scatter = track.hasSpeeds() ? Scatter.speedMps(apart) : Scatter.positionM(apart);
        List<TrackPoint> kept = track.hasSpeeds() ? OutlierRejection.bySpeed(apart)
                : OutlierRejection.byPosition(apart, scatter);
        return new KeptPoints(List.copyOf(kept), track.points().size() - apart.size(), apart.size() - kept.size(), scatter);
    }

    /** Usual time between points, s: the median. */
    double intervalS() {
        double[] intervals = new double[Math.max(1, points.size() - 1)];
        for (int i = 1; i < points.size(); i++) {
            intervals[i - 1] = points.get(i).timeS() - points.get(i - 1).timeS();
        }
        Arrays.sort(intervals);
        return intervals[intervals.length / 2];
    }
}
