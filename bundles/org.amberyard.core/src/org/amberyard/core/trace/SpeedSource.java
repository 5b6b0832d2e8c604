package org.amberyard.core.trace;

import java.util.List;

/** Where the speeds of a track come from. */
interface SpeedSource {
    /** Positions farther apart in time are joined as they are: no curve could be fitted between two stops, s. */
    double LONGEST_FITTED_S = 2.5;

    /** Steps between the points of a run without long gaps. */
    List<PathStep> steps(List<TrackPoint> run);

    /** Time to either side over which positions or speeds are fitted, s; 0 when they are taken as they are. */
    double halfWidthS();

    /** Usual error of the positions that the speeds come from, along one axis, m; 0 for speeds that were given. */
    double positionScatterM();

    /** Speed below which the bus is taken to stand, m/s. */
    default double standingBelowMps() {
        return Standing.limitMps(positionScatterM());
    }

    /** The logger's speeds where every point has one, else the positions. */
    static SpeedSource of(Track track, KeptPoints kept) {
        if (track.hasSpeeds()) {
            return new GivenSpeeds(kept.points(), kept.scatter());
        }
        double intervalS = kept.intervalS();
        return intervalS <= LONGEST_FITTED_S ? new FittedSpeeds(kept.scatter(), intervalS) : new ChordSpeeds();
    }
}
