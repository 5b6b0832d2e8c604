package org.amberyard.core.duty;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Makes a drive from the summary of a run: equal micro-trips between stops, each accelerating, cruising, slowing and
 * standing.
 *
 * <p>The bus cruises at the speed that the roads allow, or turns from accelerating to slowing before it gets there. What is
 * left of the scheduled time is spent standing, at stops and at junctions; when the schedule leaves less than the least
 * dwell at each stop, the drive takes longer than scheduled. Micro-trips climb and descend by turns so that the run's whole
 * climb is driven and the run ends as high as it began.
 */
public final class TraceSynthesis {
    private static final double STEP_S = 1.0;
    /** No road is steeper than this; keeps a mistyped climb from breaking the arithmetic. */
    private static final double STEEPEST_SINE = 0.5;

    private final DriverStyle style;

    public TraceSynthesis(DriverStyle style) {
        this.style = style;
    }

    /** The drive for a run with at least one stop. */
    public DrivePattern of(RunInput run) {
        int microTrips = run.stops() + 1;
        double lengthM = run.distanceKm() * 1000 / microTrips;
        int climbing = microTrips / 2;
        double grade = grade(run.climbM(), lengthM * climbing);
        double peakMps = peakSpeedMps(lengthM, style.speedFactor() * run.topSpeedKmh() / 3.6);
        double standingS = standingS(run, microTrips, movingS(lengthM, peakMps));
        List<DrivePattern.Piece> pieces = new ArrayList<>();
        pieces.add(new DrivePattern.Piece(microTrip(lengthM, peakMps, standingS, grade), climbing));
        pieces.add(new DrivePattern.Piece(microTrip(lengthM, peakMps, standingS, -grade), climbing));
        if (microTrips % 2 == 1) {
            pieces.add(new DrivePattern.Piece(microTrip(lengthM, peakMps, standingS, 0), 1));
        }
        return new DrivePattern(pieces);
    }

    private static double grade(double climbM, double roadM) {
        double sine = Math.min(STEEPEST_SINE, climbM / roadM);
        return sine / Math.sqrt(1 - sine * sine);
    }

    private double peakSpeedMps(double lengthM, double topMps) {
        double triangleMps = Math.sqrt(2 * lengthM / (1 / style.accelerationMps2() + 1 / style.decelerationMps2()));
        return Math.min(topMps, triangleMps);
    }

    private double rampM(double peakMps) {
        return 0.5 * square(peakMps) * (1 / style.accelerationMps2() + 1 / style.decelerationMps2());
    }

    private double movingS(double lengthM, double peakMps) {
        double rampsS = peakMps / style.accelerationMps2() + peakMps / style.decelerationMps2();
        return rampsS + Math.max(0, lengthM - rampM(peakMps)) / peakMps;
    }

    private static double standingS(RunInput run, int microTrips, double movingS) {
        double leastS = run.dwellS() * run.stops() / microTrips;
        return Math.max(leastS, run.durationMin() * 60 / microTrips - movingS);
    }

    private SpeedTrace microTrip(double lengthM, double peakMps, double standingS, double grade) {
        TraceBuilder trace = new TraceBuilder();
        trace.ramp(peakMps, peakMps / style.accelerationMps2());
        trace.hold(Math.max(0, lengthM - rampM(peakMps)) / peakMps);
        trace.ramp(0, peakMps / style.decelerationMps2());
        trace.hold(standingS);
        return trace.build(grade);
    }

    private static double square(double x) {
        return x * x;
    }

    /** Collects points; ramps are cut into steps of about a second because drag grows with the square of the speed. */
    private static final class TraceBuilder {
        private static final double NEGLIGIBLE_S = 1e-6;
        private final List<Double> times = new ArrayList<>(List.of(0.0));
        private final List<Double> speeds = new ArrayList<>(List.of(0.0));

        void ramp(double toMps, double durationS) {
            double fromMps = speeds.get(speeds.size() - 1);
            double startS = times.get(times.size() - 1);
            int steps = Math.max(1, (int) Math.ceil(durationS / STEP_S));
            for (int i = 1; i < steps; i++) {
                add(startS + durationS * i / steps, fromMps + (toMps - fromMps) * i / steps);
            }
            add(startS + durationS, toMps);
        }

        void hold(double durationS) {
            if (durationS > NEGLIGIBLE_S) {
                add(times.get(times.size() - 1) + durationS, speeds.get(speeds.size() - 1));
            }
        }

        private void add(double timeS, double speedMps) {
            times.add(timeS);
            speeds.add(speedMps);
        }

        SpeedTrace build(double grade) {
            double[] grades = new double[times.size() - 1];
            Arrays.fill(grades, grade);
            return new SpeedTrace(times.stream().mapToDouble(Double::doubleValue).toArray(),
                    speeds.stream().mapToDouble(Double::doubleValue).toArray(), grades);
        }
    }
}
