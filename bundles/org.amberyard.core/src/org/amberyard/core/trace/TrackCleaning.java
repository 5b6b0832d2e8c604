package org.amberyard.core.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.duty.SpeedTrace;

/**
 * Makes a drive of a logged track.
 *
 * <p>In this order: points of the same time and those that no bus can have reached are left out; long gaps become standing
 * time or are bridged; speeds come from the logger where it gave them, else from the positions; they are read at every
 * second; a creeping bus is brought to rest, and a drive that begins or ends in motion gets a ramp; elevations are smoothed
 * over distance and freed from noise. Each rule is a class of its own, and the report counts what it did.
 */
public final class TrackCleaning {
    private final Track track;
    private final KeptPoints kept;
    private final Gaps gaps;
    private final SpeedSource source;

    private TrackCleaning(Track track) {
        this.track = track;
        this.kept = KeptPoints.of(track);
        this.gaps = Gaps.of(kept);
        this.source = SpeedSource.of(track, kept);
    }

    /**
     * The drive of a track.
     *
     * @throws UnusableTrackException when too little of the track is sound
     */
    public static CleanedTrack clean(Track track) throws UnusableTrackException {
        TrackCleaning cleaning = new TrackCleaning(track);
        TrackLimits.checkPoints(track, cleaning.kept);
        List<PathStep> steps = cleaning.steps();
        TrackLimits.checkDistance(steps, cleaning.gaps);
        double[] speedMps = SecondSpeeds.of(steps);
        TrackLimits.checkSpeeds(speedMps);
        return cleaning.drive(speedMps);
    }

    private List<PathStep> steps() {
        List<PathStep> steps = new ArrayList<>();
        for (int i = 0; i < gaps.runs().size(); i++) {
            if (i > 0) {
                steps.add(gaps.longGaps().get(i - 1).step());
            }
            steps.addAll(source.steps(gaps.runs().get(i)));
        }
        return steps;
    }

    private CleanedTrack drive(double[] secondMps) {
        RestEnds drive = RestEnds.of(Standing.atRest(secondMps, source.standingBelowMps()));
        double[] speedMps = drive.speedMps();
        double[] timeS = IntStream.range(0, speedMps.length).mapToDouble(s -> s).toArray();
        double[] distanceM = distances(speedMps);
        double[] elevationM = elevations(distanceM, drive.startRampS());
        GradeProfile grades = GradeProfile.of(timeS, speedMps, elevationM);
        SpeedTrace trace = grades.trace(timeS, speedMps);
        return new CleanedTrack(trace, IntStream.range(0, elevationM.length).mapToObj(i -> elevationM[i]).toList(),
                report(trace, drive, grades.clipped()));
    }

    private static double[] distances(double[] speedMps) {
        double[] distanceM = new double[speedMps.length];
        for (int i = 1; i < speedMps.length; i++) {
            distanceM[i] = distanceM[i - 1] + 0.5 * (speedMps[i - 1] + speedMps[i]);
        }
        return distanceM;
    }

    private double[] elevations(double[] distanceM, int startRampS) {
        List<TrackPoint> measured = kept.points().stream().filter(TrackPoint::hasElevation).toList();
        if (measured.isEmpty()) {
            return new double[0];
        }
        double startS = kept.points().get(0).timeS() - startRampS;
        double[] measuredAtM = measured.stream().mapToDouble(p -> at(distanceM, p.timeS() - startS)).toArray();
        ElevationProfile profile = ElevationProfile.of(measuredAtM,
                measured.stream().mapToDouble(TrackPoint::elevationM).toArray(), distanceM[distanceM.length - 1]);
        double[] elevationM = new double[distanceM.length];
        for (int i = 0; i < elevationM.length; i++) {
            elevationM[i] = profile.elevationM(distanceM[i]);
        }
        return elevationM;
    }

    private static double at(double[] distanceM, double timeS) {
        int before = Math.max(0, Math.min(distanceM.length - 2, (int) timeS));
        double share = Math.min(1, timeS - before);
        return distanceM[before] + share * (distanceM[before + 1] - distanceM[before]);
    }

    private CleaningReport report(SpeedTrace trace, RestEnds drive, int clipped) {
        CleaningReport.GapReport gapReport = new CleaningReport.GapReport(gaps.interpolated(), gaps.standing(),
                gaps.bridged(), gaps.bridgedM());
        return new CleaningReport(track.points().size(), kept.sameTime(), kept.outliers(), source.positionScatterM(),
                source.halfWidthS(), gapReport, RawTrack.distanceM(track), trace.distanceM(), RawTrack.climbM(track),
                DriveStatistics.of(trace).climbM(), drive.startRampS(), drive.endRampS(), clipped);
    }
}
