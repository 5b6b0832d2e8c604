package org.amberyard.core.trace;

import java.util.List;
import org.amberyard.core.duty.SpeedTrace;

/**
 * A drive made from a track.
 *
 * @param trace speed and grade at every second, from rest to rest
 * @param elevationM elevation at each point of the trace, m; empty when the track has none, and the drive is then level
 * @param report what was done to get there
 */
public record CleanedTrack(SpeedTrace trace, List<Double> elevationM, CleaningReport report) {

    public CleanedTrack {
        elevationM = List.copyOf(elevationM);
    }
}
