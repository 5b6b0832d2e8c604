package org.amberyard.core.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.amberyard.core.duty.SpeedTrace;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Cleaning of invented drives whose truth is known. */
class TrackCleaningTest {

    @Test
    void cleanSpeedsStayAsTheyAre() throws UnusableTrackException {
        MadeDrive drive = MadeDrive.of(1, 10);
        CleanedTrack cleaned = TrackCleaning.clean(drive.speeds());
        assertEquals(0, cleaned.report().smoothedOverS());
        assertEquals(drive.truth().distanceM(), cleaned.trace().distanceM(), 0.005 * drive.truth().distanceM());
        assertEquals(MadeDrive.wheelKwh(drive.truth()), MadeDrive.wheelKwh(cleaned.trace()), 0.002 * MadeDrive.wheelKwh(drive.truth()));
        assertEquals(drive.seconds(), cleaned.trace().totalS());
        assertEquals(List.of(), cleaned.elevationM());
    }

    @Property(tries = 20)
    void anyDriveKeepsDistanceAndStandsAtItsEnds(@ForAll @LongRange(min = 1, max = 10_000) long seed,
            @ForAll @IntRange(min = 2, max = 12) int legs) throws UnusableTrackException {
        MadeDrive drive = MadeDrive.of(seed, legs);
        SpeedTrace cleaned = TrackCleaning.clean(drive.speeds()).trace();
        assertEquals(drive.truth().distanceM(), cleaned.distanceM(), 0.005 * drive.truth().distanceM());
        assertEquals(0, cleaned.speedMps(0));
        assertEquals(0, cleaned.speedMps(cleaned.steps()));
    }

    @ParameterizedTest
    @CsvSource({"0.05,1", "0.3,2", "1,3", "2,4", "3,5", "3,6", "5,7"})
    void scatteringPositionsGiveDistanceAndWork(double scatterM, long seed) throws UnusableTrackException {
        MadeDrive drive = MadeDrive.of(seed, 30);
        CleanedTrack cleaned = TrackCleaning.clean(new Track(drive.positions(scatterM, 1, seed)));
        assertEquals(scatterM, cleaned.report().positionScatterM(), 0.05 * scatterM + 0.01);
        assertEquals(drive.truth().distanceM(), cleaned.trace().distanceM(), 0.01 * drive.truth().distanceM());
        double work = MadeDrive.wheelKwh(drive.truth());
        assertEquals(work, MadeDrive.wheelKwh(cleaned.trace()), 0.05 * work);
        assertEquals(DriveStatistics.of(drive.truth()).idleShare(), DriveStatistics.of(cleaned.trace()).idleShare(), 0.03);
        if (scatterM >= 1) {
            assertTrue(cleaned.report().rawDistanceM() > 1.04 * drive.truth().distanceM(), "raw positions zigzag");
        }
    }

    /** Between points five seconds apart a stop may begin and end unseen, so the work is less certain. */
    @ParameterizedTest
    @CsvSource({"0.1,5", "0.5,5", "0.1,3"})
    void sparsePositionsGiveDistanceAndWork(double scatterM, int intervalS) throws UnusableTrackException {
        MadeDrive drive = MadeDrive.of(7, 30);
        SpeedTrace cleaned = TrackCleaning.clean(new Track(drive.positions(scatterM, intervalS, 7))).trace();
        assertEquals(drive.truth().distanceM(), cleaned.distanceM(), 0.01 * drive.truth().distanceM());
        double work = MadeDrive.wheelKwh(drive.truth());
        assertEquals(work, MadeDrive.wheelKwh(cleaned), 0.08 * work);
    }

    @Test
    void scatteringSpeedsAreSmoothed() throws UnusableTrackException {
        MadeDrive drive = MadeDrive.of(3, 30);
        Random noise = new Random(3);
        Track noisy = new Track(drive.speeds().points().stream().map(p -> TrackPoint.ofSpeed(p.timeS(),
                p.speedMps() > 0 ? Math.max(0, p.speedMps() + 0.3 * noise.nextGaussian()) : 0)).toList());
        CleanedTrack cleaned = TrackCleaning.clean(noisy);
        assertTrue(cleaned.report().smoothedOverS() >= 2);
        double work = MadeDrive.wheelKwh(drive.truth());
        assertTrue(MadeDrive.wheelKwh(SpeedTrace.level(times(noisy), speeds(noisy))) > 1.15 * work, "noise is work when left in");
        assertEquals(work, MadeDrive.wheelKwh(cleaned.trace()), 0.05 * work);
        assertEquals(drive.truth().distanceM(), cleaned.trace().distanceM(), 0.005 * drive.truth().distanceM());
    }

    @Test
    void speedsThatNeverComeToZeroStillStand() throws UnusableTrackException {
        MadeDrive drive = MadeDrive.of(13, 10);
        Random noise = new Random(13);
        Track creeping = new Track(drive.speeds().points().stream()
                .map(p -> TrackPoint.ofSpeed(p.timeS(), Math.max(0.01, p.speedMps() + 0.05 * noise.nextGaussian()))).toList());
        SpeedTrace cleaned = TrackCleaning.clean(creeping).trace();
        assertEquals(DriveStatistics.of(drive.truth()).idleShare(), DriveStatistics.of(cleaned).idleShare(), 0.02);
        assertEquals(drive.truth().distanceM(), cleaned.distanceM(), 0.005 * drive.truth().distanceM());
    }

    private static double[] times(Track track) {
        return track.points().stream().mapToDouble(TrackPoint::timeS).toArray();
    }

    private static double[] speeds(Track track) {
        return track.points().stream().mapToDouble(TrackPoint::speedMps).toArray();
    }

    @Test
    void speedsThatNoBusReachesAreLeftOut() throws UnusableTrackException {
        MadeDrive drive = MadeDrive.of(4, 10);
        List<TrackPoint> points = new ArrayList<>(drive.speeds().points());
        for (int s : new int[] {0, 100, 200, 201, 400}) {
            points.set(s, TrackPoint.ofSpeed(s, 60));
        }
        CleanedTrack cleaned = TrackCleaning.clean(new Track(points));
        assertEquals(5, cleaned.report().outliers());
        assertEquals(drive.truth().distanceM(), cleaned.trace().distanceM(), 0.005 * drive.truth().distanceM());
    }

    @Test
    void positionsThatLeapAreLeftOut() throws UnusableTrackException {
        MadeDrive drive = MadeDrive.of(5, 20);
        List<TrackPoint> points = drive.positions(0.3, 1, 5);
        for (int s : new int[] {100, 101, 102, 300, 500, 700}) {
            TrackPoint p = points.get(s);
            double awayDeg = s < 110 ? 0.005 : 0.0003;
            points.set(s, new TrackPoint(s, p.latitudeDeg() + awayDeg, p.longitudeDeg(), Double.NaN, Double.NaN));
        }
        CleanedTrack cleaned = TrackCleaning.clean(new Track(points));
        assertEquals(6, cleaned.report().outliers(), 1);
        assertEquals(drive.truth().distanceM(), cleaned.trace().distanceM(), 0.01 * drive.truth().distanceM());
    }

    @Test
    void pointsOfTheSameTimeCountOnce() throws UnusableTrackException {
        List<TrackPoint> points = new ArrayList<>(MadeDrive.of(6, 5).speeds().points());
        points.add(50, points.get(50));
        points.add(80, points.get(80));
        CleanedTrack cleaned = TrackCleaning.clean(new Track(points));
        assertEquals(2, cleaned.report().sameTime());
        assertEquals(MadeDrive.of(6, 5).speeds().points().size() + 2, cleaned.report().pointsRead());
    }

    @Test
    void shortGapsAreInterpolated() throws UnusableTrackException {
        MadeDrive drive = MadeDrive.of(8, 20);
        CleanedTrack cleaned = TrackCleaning.clean(new Track(without(drive.positions(0.3, 1, 8), 120, 8)));
        assertEquals(new GapTotal(1, 9), cleaned.report().gaps().interpolated());
        assertEquals(GapTotal.NONE, cleaned.report().gaps().bridged());
        assertEquals(drive.truth().distanceM(), cleaned.trace().distanceM(), 0.01 * drive.truth().distanceM());
        assertEquals(drive.seconds(), cleaned.trace().totalS());
    }

    @Test
    void longGapsWithoutMovementAreStandingTime() throws UnusableTrackException {
        MadeDrive drive = MadeDrive.of(9, 20);
        int stop = restAfter(drive, 300);
        List<TrackPoint> points = new ArrayList<>();
        for (TrackPoint p : drive.positions(0.3, 1, 9)) {
            double later = p.timeS() > stop ? 600 : 0;
            points.add(new TrackPoint(p.timeS() + later, p.latitudeDeg(), p.longitudeDeg(), Double.NaN, Double.NaN));
        }
        CleanedTrack cleaned = TrackCleaning.clean(new Track(points));
        assertEquals(new GapTotal(1, 601), cleaned.report().gaps().standing());
        assertEquals(drive.seconds() + 600, cleaned.trace().totalS());
        assertEquals(0, cleaned.trace().speedMps(stop + 300));
        assertEquals(drive.truth().distanceM(), cleaned.trace().distanceM(), 0.01 * drive.truth().distanceM());
    }

    private static int restAfter(MadeDrive drive, int second) {
        int s = second;
        while (drive.speedMps(s) > 0) {
            s++;
        }
        return s + 3;
    }

    @Test
    void longGapsWithMovementAreBridgedAndReported() throws UnusableTrackException {
        MadeDrive drive = MadeDrive.of(10, 30);
        CleanedTrack cleaned = TrackCleaning.clean(new Track(without(drive.positions(0.3, 1, 10), 200, 60)));
        assertEquals(new GapTotal(1, 61), cleaned.report().gaps().bridged());
        assertTrue(cleaned.report().gaps().bridgedM() > 100);
        assertEquals(drive.truth().distanceM(), cleaned.trace().distanceM(), 0.03 * drive.truth().distanceM());
    }

    private static List<TrackPoint> without(List<TrackPoint> points, int from, int count) {
        List<TrackPoint> rest = new ArrayList<>(points);
        rest.subList(from, from + count).clear();
        return rest;
    }

    @Test
    void gapsInSpeedsAreJudgedByTheSpeedsAtTheirEnds() throws UnusableTrackException {
        List<TrackPoint> points = new ArrayList<>();
        for (int s = 0; s <= 100; s++) {
            points.add(TrackPoint.ofSpeed(s, Math.min(10, Math.min(s, 100 - s))));
        }
        for (int s = 400; s <= 500; s++) {
            points.add(TrackPoint.ofSpeed(s, Math.min(10, Math.min(s - 400, 500 - s))));
        }
        points.subList(50, 65).clear();
        CleanedTrack cleaned = TrackCleaning.clean(new Track(points));
        assertEquals(new GapTotal(1, 300), cleaned.report().gaps().standing());
        assertEquals(new GapTotal(1, 16), cleaned.report().gaps().bridged());
        assertEquals(160, cleaned.report().gaps().bridgedM(), 1e-9);
        assertEquals(1800, cleaned.trace().distanceM(), 1);
    }

    @Test
    void burstsOfPointsBetweenLongGapsAreNoTrouble() throws UnusableTrackException {
        MadeDrive drive = MadeDrive.of(12, 30);
        List<TrackPoint> points = new ArrayList<>(drive.positions(0.3, 1, 12));
        double startS = drive.seconds() + 60;
        for (int i = 0; i < 6; i++) {
            TrackPoint last = points.get(points.size() - 1);
            points.add(new TrackPoint(startS + 0.05 * i, last.latitudeDeg(), last.longitudeDeg(), Double.NaN, Double.NaN));
        }
        CleanedTrack cleaned = TrackCleaning.clean(new Track(points));
        assertEquals(1, cleaned.report().gaps().standing().count());
        assertEquals(drive.truth().distanceM(), cleaned.trace().distanceM(), 0.01 * drive.truth().distanceM());
    }

    @Test
    void aTrackInMotionAtItsEndsGetsRamps() throws UnusableTrackException {
        List<TrackPoint> points = new ArrayList<>();
        for (int s = 0; s <= 100; s++) {
            points.add(TrackPoint.ofSpeed(s, s < 50 ? 8 : 4));
        }
        CleanedTrack cleaned = TrackCleaning.clean(new Track(points));
        assertEquals(10, cleaned.report().startRampS());
        assertEquals(5, cleaned.report().endRampS());
        assertEquals(115, cleaned.trace().totalS());
        assertEquals(0, cleaned.trace().speedMps(0));
        assertEquals(0.8, cleaned.trace().accelerationMps2(0), 1e-9);
        assertEquals(-0.8, cleaned.trace().accelerationMps2(cleaned.trace().steps() - 1), 1e-9);
    }

    @Test
    void unusableTracksAreRefusedWithTheReason() {
        assertEquals("The track is only 10 m long; a drive needs at least 100 m.",
                refusal(TrackPoint.ofSpeed(0, 1), TrackPoint.ofSpeed(10, 1)));
        assertEquals("The track lasts 25.0 hours; a drive may last up to 24. Cut it into single drives.",
                refusal(TrackPoint.ofSpeed(0, 1), TrackPoint.ofSpeed(90_000, 1)));
        assertEquals("All points of the track bear the same time; a drive needs at least two moments.",
                refusal(TrackPoint.ofSpeed(5, 1), TrackPoint.ofSpeed(5, 1)));
        assertEquals("100 % of the distance lies in gaps of more than 10 s; up to 10 % may be bridged. Points every second are "
                + "best, every 5 s will do.", refusal(TrackPoint.ofSpeed(0, 9), TrackPoint.ofSpeed(30, 9), TrackPoint.ofSpeed(60, 9)));
        assertEquals("2 of 4 points cannot be right, because no bus moves like that; up to a fifth may be left out. "
                + "Check the units and the columns.",
                refusal(TrackPoint.ofSpeed(0, 9), TrackPoint.ofSpeed(1, 9), TrackPoint.ofSpeed(2, 90), TrackPoint.ofSpeed(3, 90)));
    }

    /** Half a degree of longitude is 42 km at 41 degrees north; of four points none tells that the last is off. */
    @Test
    void aTrackThatNoBusDrivesIsRefused() {
        TrackPoint[] points = IntStream.range(0, 4).mapToObj(s -> new TrackPoint(s, 41, s == 3 ? -93 : -93.5, Double.NaN, 300)).toArray(TrackPoint[]::new);
        String refusal = refusal(points);
        assertTrue(refusal.matches("Between its points the track moves at up to [\\d,]+ km/h, as no bus does; they cannot be right. "
                + "Check the units and the columns."), refusal);
    }

    private static String refusal(TrackPoint... points) {
        return assertThrows(UnusableTrackException.class, () -> TrackCleaning.clean(new Track(List.of(points)))).getMessage();
    }

    @Property(tries = 30)
    void noSpeedIsNegativeWhateverTheScatter(@ForAll @DoubleRange(min = 0, max = 8) double scatterM,
            @ForAll @LongRange(min = 1, max = 1000) long seed) throws UnusableTrackException {
        SpeedTrace trace = TrackCleaning.clean(new Track(MadeDrive.of(seed, 4).positions(scatterM, 1, seed))).trace();
        assertEquals(0, trace.speedMps(0));
        assertEquals(0, trace.speedMps(trace.steps()));
        assertTrue(DriveStatistics.of(trace).maxSpeedMps() < 30);
    }
}
