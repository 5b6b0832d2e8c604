package org.amberyard.exchange;

import java.util.List;
import org.amberyard.core.trace.Track;
import org.amberyard.core.trace.TrackPoint;

/** Makes a track of the points of a file. */
final class Tracks {
    private Tracks() {
    }

    /** @throws ImportException when the points do not make a track */
    static Track of(List<TrackPoint> points, String file) throws ImportException {
        try {
            return new Track(points);
        } catch (IllegalArgumentException e) {
            throw new ImportException(List.of(new ImportProblem(file, 0, "", e.getMessage() + ".")));
        }
    }
}
