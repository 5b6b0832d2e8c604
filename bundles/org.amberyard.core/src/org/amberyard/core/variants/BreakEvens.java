package org.amberyard.core.variants;

import java.util.Optional;

/**
 * Where plans cost as much as the baseline, as far as it has been found.
 *
 * @param alone along each input by itself
 * @param line along the widest input, for values of the second
 * @param surface along the widest input, over the second and the third
 */
public record BreakEvens(Optional<BreakEvensAlone> alone, Optional<BreakEvenLine> line, Optional<BreakEvenSurface> surface) {
    /** Nothing has been found yet. */
    public static final BreakEvens NONE = new BreakEvens(Optional.empty(), Optional.empty(), Optional.empty());
}
