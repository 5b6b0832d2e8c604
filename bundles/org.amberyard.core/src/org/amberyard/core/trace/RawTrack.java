package org.amberyard.core.trace;

import java.util.List;
import java.util.OptionalDouble;

/** Distance and climb of a track as it was read, noise included; beside the clean figures they tell how much noise there was. */
final class RawTrack {
    private RawTrack() {
    }

    static double distanceM(Track track) {
        double sum = 0;
        for (int i = 1; i < track.points().size(); i++) {
            TrackPoint from = track.points().get(i - 1);
            TrackPoint to = track.points().get(i);
            sum += track.hasSpeeds() ? 0.5 * (from.speedMps() + to.speedMps()) * (to.timeS() - from.timeS())
                    : GreatCircle.distanceM(from, to);
        }
        return sum;
    }

    static OptionalDouble climbM(Track track) {
        List<TrackPoint> measured = track.points().stream().filter(TrackPoint::hasElevation).toList();
        double sum = 0;
        for (int i = 1; i < measured.size(); i++) {
            sum += Math.max(0, measured.get(i).elevationM() - measured.get(i - 1).elevationM());
        }
        return measured.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(sum);
    }
}
