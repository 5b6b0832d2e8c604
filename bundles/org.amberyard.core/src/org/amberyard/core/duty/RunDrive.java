package org.amberyard.core.duty;

import java.util.ArrayList;
import java.util.List;

/** The drive of one run, worked out once for all vehicles and weathers. */
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
        this.pieces = pieces(pattern);
        this.hours = pattern.totalS() / 3600;
    }

    private static List<Piece> pieces(DrivePattern pattern) {
        List<Piece> pieces = new ArrayList<>();
        for (DrivePattern.Piece piece : pattern.pieces()) {
            pieces.add(new Piece(new TraceSteps(piece.trace()), piece.times()));
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
