package org.amberyard.core.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Elevations of an invented drive of 10 km at 10 m/s, with the noise of a receiver. */
class ElevationTest {
    private static final int SECONDS = 1000;

    private static CleanedTrack driven(DoubleUnaryOperator elevationM, double noiseM, long seed) throws UnusableTrackException {
        Random noise = new Random(seed);
        List<TrackPoint> points = new ArrayList<>();
        for (int s = 0; s <= SECONDS; s++) {
            double speed = Math.min(10, Math.min(s, SECONDS - s));
            double elevation = elevationM.applyAsDouble(10.0 * s) + noiseM * noise.nextGaussian();
            points.add(new TrackPoint(s, Double.NaN, Double.NaN, speed, elevation));
        }
        return TrackCleaning.clean(new Track(points));
    }

    /** Two hills of 60 m, 2 km from foot to foot, rounded like roads. */
    private static double hills(double atM) {
        double x = atM % 5000;
        return x < 2000 ? 30 * (1 - Math.cos(2 * Math.PI * x / 2000)) : 0;
    }

    @ParameterizedTest
    @CsvSource({"2,1", "2,2", "2,3", "2,4", "5,5", "5,6", "5,7", "5,8"})
    void noiseOnTheFlatIsNoClimb(double noiseM, long seed) throws UnusableTrackException {
        CleaningReport report = driven(m -> 200, noiseM, seed).report();
        assertTrue(report.rawClimbM().orElseThrow() > 1000, "the noise sums up to a mountain");
        assertTrue(report.cleanClimbM() < 2 * noiseM, "clean climb " + report.cleanClimbM());
    }

    @ParameterizedTest
    @CsvSource({"2,1", "2,2", "2,3", "2,4", "5,5", "5,6", "5,7", "5,8"})
    void hillsKeepTheirClimbUnderNoise(double noiseM, long seed) throws UnusableTrackException {
        assertEquals(120, driven(ElevationTest::hills, noiseM, seed).report().cleanClimbM(), 2 * noiseM);
    }

    @Test
    void hillsKeepTheirClimbAndGradeWithoutNoise() throws UnusableTrackException {
        CleanedTrack cleaned = driven(ElevationTest::hills, 0, 1);
        assertEquals(120, cleaned.report().cleanClimbM(), 1);
        double steepest = 0;
        for (int i = 0; i < cleaned.trace().steps(); i++) {
            steepest = Math.max(steepest, cleaned.trace().grade(i));
        }
        assertEquals(30 * 2 * Math.PI / 2000, steepest, 0.003);
        assertEquals(0, cleaned.report().clippedSteps());
    }

    @Test
    void aSingleLeapOfTheElevationIsIgnored() throws UnusableTrackException {
        assertEquals(0, driven(m -> m == 5000 ? 900 : 200, 0, 1).report().cleanClimbM(), 1e-9);
    }

    @Test
    void stepsSteeperThanAnyRoadAreClippedAndCounted() throws UnusableTrackException {
        CleanedTrack cleaned = driven(m -> m < 5000 ? 200 : 500, 0, 1);
        assertTrue(cleaned.report().clippedSteps() > 5);
        for (int i = 0; i < cleaned.trace().steps(); i++) {
            assertTrue(Math.abs(cleaned.trace().grade(i)) <= 0.25);
        }
    }

    @Test
    void aSteadySlopeKeepsItsEnds() throws UnusableTrackException {
        CleanedTrack cleaned = driven(m -> 100 + 0.03 * m, 0, 1);
        assertEquals(0.03 * 9900, cleaned.report().cleanClimbM(), 4);
        assertEquals(cleaned.trace().steps() + 1, cleaned.elevationM().size());
    }

    @Test
    void missingElevationsAreFilledByStraightLines() throws UnusableTrackException {
        List<TrackPoint> points = new ArrayList<>();
        for (int s = 0; s <= SECONDS; s++) {
            double elevation = s < 300 || s > 600 ? Double.NaN : 0.2 * s;
            points.add(new TrackPoint(s, Double.NaN, Double.NaN, Math.min(10, Math.min(s, SECONDS - s)), elevation));
        }
        CleanedTrack cleaned = TrackCleaning.clean(new Track(points));
        assertEquals(60, cleaned.report().cleanClimbM(), 1);
        assertEquals(60, cleaned.elevationM().get(0), 0.5);
        assertEquals(120, cleaned.elevationM().get(SECONDS), 0.5);
    }

    /** In a tunnel of 3 km nothing is received; the road goes on as straight as it can. */
    @Test
    void elevationsMissingInBetweenLieOnALine() throws UnusableTrackException {
        List<TrackPoint> points = new ArrayList<>();
        for (int s = 0; s <= SECONDS; s++) {
            double elevation = s > 300 && s < 600 ? Double.NaN : s <= 300 ? 100 : 190;
            points.add(new TrackPoint(s, Double.NaN, Double.NaN, Math.min(10, Math.min(s, SECONDS - s)), elevation));
        }
        CleanedTrack cleaned = TrackCleaning.clean(new Track(points));
        assertEquals(90, cleaned.report().cleanClimbM(), 1);
        assertEquals(145, cleaned.elevationM().get(450), 0.5);
        assertEquals(122.5, cleaned.elevationM().get(375), 0.5);
    }

    /** Points every two and a half seconds, so that every second one stands between full seconds. */
    @Test
    void elevationsBelongToThePlaceWhereTheyWereMeasured() throws UnusableTrackException {
        List<TrackPoint> points = new ArrayList<>();
        for (int i = 0; i <= SECONDS / 2.5; i++) {
            double s = 2.5 * i;
            double speed = Math.min(10, Math.min(s, SECONDS - s));
            double m = s < 10 ? s * s / 2 : Math.min(s, SECONDS - 10) * 10 - 50 + (s > SECONDS - 10 ? 50 - Math.pow(SECONDS - s, 2) / 2 : 0);
            points.add(new TrackPoint(s, Double.NaN, Double.NaN, speed, 100 + 0.06 * m));
        }
        CleanedTrack cleaned = TrackCleaning.clean(new Track(points));
        for (int s = 100; s <= 900; s += 100) {
            assertEquals(100 + 0.06 * (10 * s - 50), cleaned.elevationM().get(s), 0.2);
        }
    }

    @Test
    void aSlopeIsReadBetweenTheTensOfMetres() {
        double[] atM = new double[101];
        double[] heightM = new double[101];
        Arrays.setAll(atM, i -> 10.0 * i);
        Arrays.setAll(heightM, i -> 100 + 0.4 * i);
        ElevationProfile profile = ElevationProfile.of(atM, heightM, 1000);
        for (double m : new double[] {0, 4, 505, 508, 1000}) {
            assertEquals(100 + 0.04 * m, profile.elevationM(m), 1e-6);
        }
        assertEquals(140, profile.elevationM(1200), 1e-6, "level beyond the end");
        assertEquals(300, ElevationProfile.of(new double[] {0}, new double[] {300}, 0).elevationM(0), 1e-9);
    }

    @Test
    void theDeadBandKeepsTurnsAndTakesRipples() {
        assertEquals(List.of(0.0, 0.0, 0.0), list(DeadBand.applied(new double[] {0, 0, 0}, 4)));
        double[] kept = DeadBand.applied(new double[] {0, 5, 4, 10, 8, 20, 10, 13, 0}, 4);
        assertEquals(List.of(0.0, 4.5, 4.5, 9.0, 9.0, 20.0, 11.5, 11.5, 0.0), list(kept));
    }

    private static List<Double> list(double[] values) {
        return Arrays.stream(values).boxed().toList();
    }
}
