package org.amberyard.workbench.look;

import org.eclipse.swt.graphics.Color;

/** Every colour of the window that is not the platform's own; views ask here and never mix their own. */
public enum Palette {
    /** Paper of tables, forms and charts. */
    PAPER(255, 255, 255),
    /** Band behind headers and the headline strip. */
    BAND(246, 246, 243),
    /** Lines between cells. */
    HAIRLINE(228, 228, 222),
    /** Lines that part areas. */
    RULE(196, 196, 188),
    /** Text. */
    INK(33, 37, 41),
    /** Text that steps back: units, labels, hints. */
    MUTED(104, 108, 112),
    /** Figures that are not up to date. */
    FADED(166, 170, 174),
    /** The focus cell and other places where the eye should go. */
    AMBER(194, 118, 0),
    /** Ground of selected cells. */
    AMBER_WASH(253, 243, 222),
    /** Text and marks of errors. */
    ERROR(176, 32, 32),
    /** Ground of cells with errors. */
    ERROR_WASH(253, 236, 234),
    /** Marks of warnings. */
    WARNING(176, 104, 0),
    /** Ground of cells with warnings. */
    WARNING_WASH(255, 248, 230),
    /** Marks of plain remarks. */
    NOTICE(62, 99, 140),
    /** Ground of electric buses, by type. */
    ELECTRIC_1(224, 238, 250),
    ELECTRIC_2(220, 243, 232),
    ELECTRIC_3(235, 230, 248),
    ELECTRIC_4(218, 243, 247),
    /** Ground of engine buses that can be bought, by type. */
    ENGINE_1(250, 242, 224),
    ENGINE_2(249, 234, 225),
    ENGINE_3(240, 241, 224),
    ENGINE_4(246, 234, 240);

    private final Color color;

    Palette(int red, int green, int blue) {
        color = new Color(red, green, blue);
    }

    /** The colour; it belongs to no device and is never disposed. */
    public Color color() {
        return color;
    }
}
