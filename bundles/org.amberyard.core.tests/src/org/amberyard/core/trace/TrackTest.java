package org.amberyard.core.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.duty.SpeedTrace;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class TrackTest {
    private static final double NONE = Double.NaN;

    @Test
    void pointsOutOfTheirRangeAreRefused() {
        assertEquals("Latitude is 91.0 but must be -90 to 90 degrees", refusal(() -> new TrackPoint(0, 91, 0, NONE, NONE)));
        assertEquals("Longitude is -181.0 but must be -180 to 180 degrees", refusal(() -> new TrackPoint(0, 0, -181, NONE, NONE)));
        assertEquals("Latitude is 1.0 but must be given together with the longitude",
                refusal(() -> new TrackPoint(0, 1, NONE, NONE, NONE)));
        assertEquals("Speed is -1.0 but must be 0 to 100 m/s", refusal(() -> TrackPoint.ofSpeed(0, -1)));
        assertEquals("Elevation is 10000.0 but must be -500 to 9,000 m", refusal(() -> new TrackPoint(0, 1, 1, NONE, 10_000)));
        assertEquals("Time is NaN but must be a finite number of seconds", refusal(() -> TrackPoint.ofSpeed(NONE, 1)));
    }

    @Test
    void tracksThatNoSpeedCanBeFoundFromAreRefused() {
        TrackPoint place = new TrackPoint(0, 41, -93, NONE, NONE);
        assertEquals("A track needs at least two points but has 1", refusal(() -> new Track(List.of(place))));
        assertEquals("Point 2 has no position, and not every point has a speed; one of both is needed throughout",
                refusal(() -> new Track(List.of(place, TrackPoint.ofSpeed(1, 2)))));
        assertEquals("Point 2 is earlier than the one before",
                refusal(() -> new Track(List.of(TrackPoint.ofSpeed(1, 2), TrackPoint.ofSpeed(0, 2)))));
        assertEquals("Point 2 lies across the 180th meridian from the one before; such tracks are not read", refusal(() -> new Track(
                List.of(new TrackPoint(0, -16, 179.99, NONE, NONE), new TrackPoint(1, -16, -179.99, NONE, NONE)))));
    }

    @Test
    void speedsAreUsedWhereEveryPointHasOne() {
        assertTrue(new Track(List.of(new TrackPoint(0, 41, -93, 1, NONE), TrackPoint.ofSpeed(1, 2))).hasSpeeds());
        assertFalse(new Track(List.of(new TrackPoint(0, 41, -93, NONE, NONE), new TrackPoint(1, 41, -93, 1, NONE))).hasSpeeds());
    }

    private static String refusal(Executable made) {
        return assertThrows(IllegalArgumentException.class, made).getMessage();
    }

    @Test
    void statisticsOfATrapezeByHand() {
        SpeedTrace trace = new SpeedTrace(new double[] {0, 10, 20, 40, 60, 80}, new double[] {0, 0, 10, 10, 0, 0},
                new double[] {0, 0, 0.05, -0.05, 0});
        DriveStatistics told = DriveStatistics.of(trace);
        assertEquals(50 + 200 + 100, told.lengthM(), 1e-9);
        assertEquals(80, told.durationS());
        assertEquals(350 / 80.0, told.meanSpeedMps(), 1e-12);
        assertEquals(10, told.maxSpeedMps());
        assertEquals(30 / 80.0, told.idleShare(), 1e-12);
        assertEquals(1, told.stops());
        assertEquals(200 * 0.05 / Math.sqrt(1 + 0.0025), told.climbM(), 1e-9);
        assertEquals(1, told.meanAccelerationMps2(), 1e-12);
    }

    /** 6 m/s in 3 s and 6 m/s more in 12 s. */
    @Test
    void theMeanAccelerationIsThatOfTheTimeInWhichItGetsFaster() {
        SpeedTrace trace = new SpeedTrace(new double[] {0, 3, 15, 30, 40}, new double[] {0, 6, 12, 12, 0}, new double[4]);
        assertEquals(0.8, DriveStatistics.of(trace).meanAccelerationMps2(), 1e-12);
        assertEquals(0, DriveStatistics.of(new SpeedTrace(new double[] {0, 10}, new double[] {0, 0}, new double[1])).meanAccelerationMps2());
    }

    /** Mean speeds of 2, 6, 6 and 2 m/s over 2 s each; 3 m and 4 m up, where elevations were measured. */
    @Test
    void theRawDistanceAndClimbAreThoseOfThePoints() {
        double[] speeds = {0, 4, 8, 4, 0};
        double[] heights = {100, 103, NONE, 101, 105};
        Track track = new Track(IntStream.range(0, 5).mapToObj(i -> new TrackPoint(2 * i, NONE, NONE, speeds[i], heights[i])).toList());
        assertEquals(32, RawTrack.distanceM(track), 1e-12);
        assertEquals(7, RawTrack.climbM(track).orElseThrow(), 1e-12);
        assertTrue(RawTrack.climbM(new Track(List.of(TrackPoint.ofSpeed(0, 1), TrackPoint.ofSpeed(1, 1)))).isEmpty());
    }

    @Test
    void gradesGiveTheRiseBack() {
        double[] time = {0, 10, 20};
        double[] speed = {0, 10, 0};
        SpeedTrace trace = GradeProfile.of(time, speed, new double[] {100, 105, 102}).trace(time, speed);
        assertEquals(5, DriveStatistics.of(trace).climbM(), 1e-9);
        assertEquals(0, GradeProfile.of(time, speed, new double[0]).trace(time, speed).grade(0));
    }
}
