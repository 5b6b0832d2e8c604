package org.amberyard.core.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.amberyard.core.duty.BrakeRecovery;
import org.amberyard.core.duty.DrivelineLoss;
import org.amberyard.core.duty.RoadLoad;
import org.amberyard.core.duty.SpeedTrace;
import org.amberyard.core.duty.TractiveWork;

/**
 * An invented drive with stops, corners and hills whose truth is known at every second, and what a logger would make of it.
 * Legs of 250 m to 900 m end at stops; every other leg has a right-angled corner taken at 5 m/s on a radius of 15 m.
 */
final class MadeDrive {
    private static final double STEP_S = 0.1;
    private static final double HOME_LATITUDE = 41.5;
    private static final double HOME_LONGITUDE = -93.5;
    private static final double METRES_PER_DEGREE = Math.toRadians(GreatCircle.RADIUS_M);
    private static final RoadLoad BUS = new RoadLoad(11_000, 0.008, 4.55, 1.05, 1.225);

    private final Random random;
    private final List<double[]> moments = new ArrayList<>();
    private double northM;
    private double eastM;
    private double headingRad;
    private int tenths;

    private MadeDrive(long seed) {
        this.random = new Random(seed);
    }

    /** A drive of some legs; about a minute each. */
    static MadeDrive of(long seed, int legs) {
        MadeDrive drive = new MadeDrive(seed);
        drive.stand(20);
        for (int leg = 0; leg < legs; leg++) {
            drive.leg(250 + 650 * drive.random.nextDouble(), 8 + 10 * drive.random.nextDouble(), leg % 2 == 1);
            drive.stand(8 + 30 * drive.random.nextDouble());
        }
        return drive;
    }

    private void leg(double lengthM, double topMps, boolean corner) {
        double cornerM = lengthM / 2;
        double arcM = 15 * Math.PI / 2;
        double speedMps = 0;
        for (double at = 0; at < lengthM - 0.05; at += speedMps * STEP_S) {
            boolean inCorner = corner && at >= cornerM && at < cornerM + arcM;
            double limit = Math.min(topMps, Math.sqrt(1.9 * (lengthM - at)));
            limit = corner && at < cornerM ? Math.min(limit, Math.sqrt(25 + 1.9 * (cornerM - at))) : limit;
            limit = inCorner ? Math.min(limit, 5) : limit;
            speedMps = Math.max(0.05, Math.min(speedMps + 0.085, limit));
            headingRad += inCorner ? Math.PI / 2 * speedMps * STEP_S / arcM : 0;
            step(speedMps);
        }
    }

    private void stand(double seconds) {
        for (double s = 0; s < seconds; s += STEP_S) {
            step(0);
        }
    }

    private void step(double speedMps) {
        northM += speedMps * STEP_S * Math.cos(headingRad);
        eastM += speedMps * STEP_S * Math.sin(headingRad);
        if (tenths++ % 10 == 0) {
            moments.add(new double[] {speedMps, northM, eastM});
        }
    }

    int seconds() {
        return moments.size() - 1;
    }

    double speedMps(int second) {
        return moments.get(second)[0];
    }

    /** The truth. */
    SpeedTrace truth() {
        return SpeedTrace.level(IntStream.range(0, moments.size()).asDoubleStream().toArray(),
                moments.stream().mapToDouble(m -> m[0]).toArray());
    }

    /** A track of speeds. */
    Track speeds() {
        List<TrackPoint> points = new ArrayList<>();
        for (int s = 0; s < moments.size(); s++) {
            points.add(TrackPoint.ofSpeed(s, speedMps(s)));
        }
        return new Track(points);
    }

    /** Points with positions that scatter by so much along each axis. */
    List<TrackPoint> positions(double scatterM, int intervalS, long seed) {
        Random noise = new Random(seed);
        List<TrackPoint> points = new ArrayList<>();
        for (int s = 0; s < moments.size(); s += intervalS) {
            points.add(at(s, moments.get(s)[1] + scatterM * noise.nextGaussian(),
                    moments.get(s)[2] + scatterM * noise.nextGaussian()));
        }
        return points;
    }

    static TrackPoint at(double timeS, double northM, double eastM) {
        return new TrackPoint(timeS, HOME_LATITUDE + northM / METRES_PER_DEGREE, HOME_LONGITUDE
                + eastM / METRES_PER_DEGREE / Math.cos(Math.toRadians(HOME_LATITUDE)), Double.NaN, Double.NaN);
    }

    /** Work that the wheels of a bus of 11 t must be given over a trace, kWh, from the road load alone. */
    static double wheelKwh(SpeedTrace trace) {
        return TractiveWork.of(trace, BUS, DrivelineLoss.mechanical(1), BrakeRecovery.NONE).drawnKwh();
    }
}
