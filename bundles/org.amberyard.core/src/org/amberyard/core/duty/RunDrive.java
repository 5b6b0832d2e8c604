package org.amberyard.core.duty;

import java.util.ArrayList;
import java.util.List;

/**
 * The drive of one run, worked out once for all vehicles and weathers. Where a trace takes less time than the schedule has, the
 * bus stands for the rest, as it does in a drive made from a summary.
 */
final class RunDrive {

    /** Flat arrays of a piece and how often it is driven. */
    record Piece(TraceSteps steps, double times) {
    }

    private final RunInput run;
    private final List<Piece> pieces;
    private final double hours;

    RunDrive(RunInput run, DriverStyle style) {
        this.run = run;
        DrivePattern pattern = run.trace().map(t -> DrivePattern.ofTrace(t, run.distanceKm()))
                .orElseGet(() -> new TraceSynthesis(style).of(run));
        double standingS = Math.max(0, run.durationMin() * 60 - pattern.totalS());
        this.pieces = pieces(pattern, run.trace().isPresent() ? standingS : 0);
        this.hours = pieces.stream().mapToDouble(p -> p.times() * p.steps().totalHours).sum();
    }

    private static List<Piece> pieces(DrivePattern pattern, double standingS) {
        List<Piece> pieces = new ArrayList<>();
        for (DrivePattern.Piece piece : pattern.pieces()) {
            pieces.add(new Piece(new TraceSteps(piece.trace()), piece.times()));
        }
        if (standingS > 0) {
            pieces.add(new Piece(new TraceSteps(SpeedTrace.level(new double[] {0, standingS}, new double[2])), 1));
        }
        return List.copyOf(pieces);
    }

    RunInput run() {
        return run;
    }

    List<Piece> pieces() {
        return pieces;
    }

    double hours() {
        return hours;
    }

    /** Stops per hour of driving. */
    double stopsPerHour() {
        return run.stops() / hours;
    }

    /** Minute at the middle of the run. */
    double middleMin() {
        return run.departureMin() + run.durationMin() / 2;
    }
}
