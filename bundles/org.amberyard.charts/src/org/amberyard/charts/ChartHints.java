package org.amberyard.charts;

import java.awt.Graphics2D;
import java.awt.RenderingHints;

/** How charts are drawn into pictures of pixels. */
public final class ChartHints {
    private ChartHints() {
    }

    /**
     * Smooth lines and letters. Letters stand at fractions of pixels: fitted to whole ones, quotation marks of small print become straight
     * strokes, and gaps between letters uneven.
     */
    public static void set(Graphics2D graphics) {
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    }
}
