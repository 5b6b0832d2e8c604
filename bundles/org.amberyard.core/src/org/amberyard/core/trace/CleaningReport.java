package org.amberyard.core.trace;

import java.util.OptionalDouble;

/**
 * What cleaning did to a track.
 *
 * @param pointsRead points of the track
 * @param sameTime points left out because they bear the time of the one before
 * @param outliers points left out because no bus can have reached them
 * @param positionScatterM usual error of a position along one axis, m; 0 where speeds were given
 * @param smoothedOverS time to either side over which positions or speeds were fitted, s; 0 when they were taken as they are
 * @param gaps times without points
 * @param rawDistanceM distance from point to point as read, m
 * @param cleanDistanceM distance of the clean drive, m
 * @param rawClimbM sum of all rises from point to point as read, m; absent without elevations
 * @param cleanClimbM sum of all rises of the clean drive, m
 * @param startRampS time added before a track that does not start at rest, s
 * @param endRampS time added after a track that does not end at rest, s
 * @param clippedSteps steps whose grade was beyond the steepest that is allowed
 */
public record CleaningReport(int pointsRead, int sameTime, int outliers, double positionScatterM,
        double smoothedOverS, GapReport gaps, double rawDistanceM, double cleanDistanceM, OptionalDouble rawClimbM,
        double cleanClimbM, int startRampS, int endRampS, int clippedSteps) {

    /**
     * Times without points that are longer than usual.
     *
     * @param interpolated those of up to ten seconds
     * @param standing longer ones in which the bus hardly moved
     * @param bridged longer ones in which it moved, driven at the mean speed
     * @param bridgedM distance so driven, m
     */
    public record GapReport(GapTotal interpolated, GapTotal standing, GapTotal bridged, double bridgedM) {
    }
}
