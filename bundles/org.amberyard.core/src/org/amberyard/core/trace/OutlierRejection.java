package org.amberyard.core.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;

/**
 * Leaves out points that no bus can have reached from the point kept before.
 *
 * <p>The longer the kept point lies back, the farther a bus can have come; so a track that has really jumped is followed
 * again after a while. Where to begin is told by the first point that its successor agrees with.
 */
final class OutlierRejection {
    /** Beyond what a bus with standing riders brakes or accelerates with, m/s²; common practice, no source. */
    static final double HARDEST_MPS2 = 4;
    /** Speeds are rounded, some to whole miles per hour, m/s. */
    private static final double SPEED_ROUNDING_MPS = 1;
    /** Faster than any bus, m/s. */
    private static final double FASTEST_MPS = 40;
    /** How often a point may lie off by its scatter; beyond, it is an error and not bad luck. */
    private static final double SCATTERS = 6;

    private OutlierRejection() {
    }

    /** Points whose speeds agree with an acceleration that a bus can have. */
    static List<TrackPoint> bySpeed(List<TrackPoint> points) {
        return reached(points, (from, to) -> Math.abs(to.speedMps() - from.speedMps()) <= HARDEST_MPS2 * (to.timeS() - from.timeS()) + SPEED_ROUNDING_MPS);
    }

    /**
     * Points whose positions a bus can have reached and that do not leap aside.
     *
     * @param scatterM usual error of a position, m
     */
    static List<TrackPoint> byPosition(List<TrackPoint> points, double scatterM) {
        double allowanceM = SCATTERS * scatterM + 1;
        List<TrackPoint> kept = reached(points, (from, to) -> GreatCircle.distanceM(from, to) <= FASTEST_MPS * (to.timeS() - from.timeS()) + allowanceM);
        int before;
        do {
            before = kept.size();
            kept = withoutLeaps(kept, allowanceM);
        } while (kept.size() < before);
        return kept;
    }

    private static List<TrackPoint> reached(List<TrackPoint> points, BiPredicate<TrackPoint, TrackPoint> canFollow) {
        int first = 0;
        while (first < points.size() - 2 && !canFollow.test(points.get(first), points.get(first + 1))) {
            first++;
        }
        List<TrackPoint> kept = new ArrayList<>();
        for (TrackPoint point : points.subList(first, points.size())) {
            if (kept.isEmpty() || canFollow.test(kept.get(kept.size() - 1), point)) {
                kept.add(point);
            }
        }
        return kept;
    }

    /** A point that leaps makes its neighbours seem to leap too, by half as much; only the worst of them goes at a time. */
    private static List<TrackPoint> withoutLeaps(List<TrackPoint> points, double allowanceM) {
        double[] excessM = new double[points.size()];
        for (int i = 1; i < points.size() - 1; i++) {
            excessM[i] = leapM(points.get(i - 1), points.get(i), points.get(i + 1)) - allowanceM;
        }
        List<TrackPoint> kept = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            boolean worst = i == 0 || i == points.size() - 1 || excessM[i] >= excessM[i - 1] && excessM[i] > excessM[i + 1];
            if (!(excessM[i] > 0) || !worst) {
                kept.add(points.get(i));
            }
        }
        return kept;
    }

    /** How far a point lies off the line between its neighbours, beyond what the hardest acceleration explains, m. */
    private static double leapM(TrackPoint before, TrackPoint point, TrackPoint after) {
        double share = (point.timeS() - before.timeS()) / (after.timeS() - before.timeS());
        double offM = GreatCircle.distanceM(point.latitudeDeg(), point.longitudeDeg(),
                before.latitudeDeg() + share * (after.latitudeDeg() - before.latitudeDeg()),
                before.longitudeDeg() + share * (after.longitudeDeg() - before.longitudeDeg()));
        return offM - 0.5 * HARDEST_MPS2 * (point.timeS() - before.timeS()) * (after.timeS() - point.timeS());
    }
}
