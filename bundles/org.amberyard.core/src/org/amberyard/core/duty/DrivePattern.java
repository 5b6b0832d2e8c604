package org.amberyard.core.duty;

import java.util.List;

/**
 * A drive as pieces that start and end at rest, each repeated a number of times. A measured trace is one piece driven once.
 *
 * <p>Because each piece starts and ends at rest, work adds up over repeats; a run of thirty equal stops costs no more to
 * compute than one.
 *
 * @param pieces the pieces
 */
public record DrivePattern(List<Piece> pieces) {

    /** A trace and how often it is driven. */
    public record Piece(SpeedTrace trace, int times) {
    }

    public DrivePattern {
        pieces = List.copyOf(pieces);
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
