package org.amberyard.core.duty;

import java.util.ArrayList;
import java.util.List;

/**
 * A drive as pieces that start and end at rest, each repeated a number of times. Because they do, work adds up over repeats:
 * a run of thirty equal stops costs no more to compute than one.
 *
 * @param pieces the pieces
 */
public record DrivePattern(List<Piece> pieces) {

    /** What is left of a repeat by rounding is not driven. */
    private static final double NEGLIGIBLE_REPEAT = 1e-9;

    /** A trace and how often it is driven; the last repeat may be driven in part, in proportion. */
    public record Piece(SpeedTrace trace, double times) {
    }

    public DrivePattern {
        pieces = List.copyOf(pieces);
    }

    /**
     * A trace driven as often as a distance needs, cut where the bus stands. A measured drive of the whole run is driven about
     * once; a published drive schedule lends the run its shape.
     *
     * @throws IllegalArgumentException when the trace does not move, or not start and end at rest
     */
    public static DrivePattern ofTrace(SpeedTrace trace, double distanceKm) {
        List<SpeedTrace> pieces = trace.cutAtRest();
        double repeats = distanceKm * 1000 / trace.distanceM();
        List<Piece> driven = new ArrayList<>();
        for (double left = repeats; left > NEGLIGIBLE_REPEAT; left--) {
            double times = Math.min(1, left);
            pieces.forEach(p -> driven.add(new Piece(p, times)));
        }
        return new DrivePattern(driven);
    }

    /** Distance of the whole drive, m. */
    public double distanceM() {
        return pieces.stream().mapToDouble(p -> p.times() * p.trace().distanceM()).sum();
    }

    /** Time of the whole drive, s. */
    public double totalS() {
        return pieces.stream().mapToDouble(p -> p.times() * p.trace().totalS()).sum();
    }
}
