package org.amberyard.workbench.look;

import org.eclipse.swt.graphics.Color;

/** Every colour of the window that is not the platform's own, in each theme; views ask here and never mix their own. */
public enum Palette {
    /** Paper of tables, forms and charts. */
    PAPER(0xFFFFFF, 0x1E2126),
    /** Band behind headers and the headline strip. */
    BAND(0xF6F6F3, 0x282C32),
    /** Lines between cells. */
    HAIRLINE(0xE4E4DE, 0x3D444D),
    /** Lines that part areas. */
    RULE(0xC4C4BC, 0x68717D),
    /** Text. */
    INK(0x212529, 0xE8EAED),
    /** Text that steps back: units, labels, hints. */
    MUTED(0x62676B, 0xA9B1BB),
    /** Figures that are not up to date. */
    FADED(0x8A8F94, 0x6E757F),
    /** The focus cell and other places where the eye should go. */
    AMBER(0xC27600, 0xF0B64C),
    /** Ground of selected cells. */
    AMBER_WASH(0xFDF3DE, 0x4A3A1C),
    /** Text and marks of errors. */
    ERROR(0xB02020, 0xFF9A8A),
    /** Ground of cells with errors. */
    ERROR_WASH(0xFDECEA, 0x4A2522),
    /** Text and marks of warnings. */
    WARNING(0xA06000, 0xF0B64C),
    /** Ground of cells with warnings. */
    WARNING_WASH(0xFFF8E6, 0x43381F),
    /** Marks of plain remarks. */
    NOTICE(0x3E638C, 0x8FB8E8),
    /** Ground of electric buses, by type. */
    ELECTRIC_1(0xE0EEFA, 0x1F3A52),
    ELECTRIC_2(0xDCF3E8, 0x1E4232),
    ELECTRIC_3(0xEBE6F8, 0x362F50),
    ELECTRIC_4(0xDAF3F7, 0x1C4249),
    /** Ground of engine buses that can be bought, by type. */
    ENGINE_1(0xFAF2E0, 0x473B1E),
    ENGINE_2(0xF9EAE1, 0x4A3026),
    ENGINE_3(0xF0F1E0, 0x3C401F),
    ENGINE_4(0xF6EAF0, 0x462E3A);

    private static final int RED = 16;
    private static final int GREEN = 8;
    private static final int BYTE = 0xFF;

    private final Color light;
    private final Color dark;

    /**
     * A colour.
     *
     * @param light red, green and blue in a light window
     * @param dark the same in a dark one
     */
    Palette(int light, int dark) {
        this.light = color(light);
        this.dark = color(dark);
    }

    private static Color color(int rgb) {
        return new Color(rgb >> RED & BYTE, rgb >> GREEN & BYTE, rgb & BYTE);
    }

    /** True for grounds and lines, false for what is written and drawn on them. */
    boolean isGround() {
        return switch (this) {
            case INK, MUTED, FADED, AMBER, ERROR, WARNING, NOTICE -> false;
            default -> true;
        };
    }

    /** The colour; it belongs to no device and is never disposed. */
    public Color color() {
        return in(Theme.shown());
    }

    /** The colour in a theme. */
    public Color in(Theme theme) {
        return theme == Theme.DARK ? dark : light;
    }
}
