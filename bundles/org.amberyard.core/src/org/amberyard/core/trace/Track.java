package org.amberyard.core.trace;

import java.util.List;

/**
 * A logged drive as it was read: points in the order of time, each with a speed or each with a position.
 *
 * @param points the points; several may bear the same time
 */
public record Track(List<TrackPoint> points) {

    /** @throws IllegalArgumentException when times fall, or points lack what speeds can be found from */
    public Track {
        points = List.copyOf(points);
        if (points.size() < 2) {
            throw new IllegalArgumentException("A track needs at least two points but has " + points.size());
        }
        boolean speeds = points.stream().allMatch(TrackPoint::hasSpeed);
        for (int i = 0; i < points.size(); i++) {
            if (i > 0 && points.get(i).timeS() < points.get(i - 1).timeS()) {
                throw new IllegalArgumentException("Point " + (i + 1) + " is earlier than the one before");
            }
            if (!speeds && !points.get(i).hasPosition()) {
                throw new IllegalArgumentException("Point " + (i + 1)
                        + " has no position, and not every point has a speed; one of both is needed throughout");
            }
            if (i > 0 && Math.abs(points.get(i).longitudeDeg() - points.get(i - 1).longitudeDeg()) > 180) {
                throw new IllegalArgumentException("Point " + (i + 1)
                        + " lies across the 180th meridian from the one before; such tracks are not read");
            }
        }
    }

    /** True when every point has a speed; positions then only tell how far gaps reach. */
    public boolean hasSpeeds() {
        return points.stream().allMatch(TrackPoint::hasSpeed);
    }
}
