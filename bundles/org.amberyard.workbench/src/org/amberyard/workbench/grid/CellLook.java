package org.amberyard.workbench.grid;

import org.amberyard.workbench.look.Palette;

/**
 * How a cell looks apart from its text.
 *
 * @param ground its ground
 * @param ink colour of its text
 * @param edge colour of a bar at its left edge; null for none
 */
public record CellLook(Palette ground, Palette ink, Palette edge) {

    /** Text on paper. */
    public static final CellLook PLAIN = new CellLook(Palette.PAPER, Palette.INK, null);

    /** A number that stands in until somebody enters one. */
    public static final CellLook DEFAULT = new CellLook(Palette.PAPER, Palette.MUTED, null);

    /** A cell that names others. */
    public static final CellLook LABEL = new CellLook(Palette.BAND, Palette.MUTED, null);
}
