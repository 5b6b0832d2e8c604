package org.amberyard.charts;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RectangularShape;
import org.jfree.chart.renderer.xy.StandardXYBarPainter;
import org.jfree.chart.renderer.xy.XYBarRenderer;
import org.jfree.chart.ui.RectangleEdge;

/** Bars whose sides stand on whole pixels, so that no gap shines through between neighbours; a light edge parts layers. */
final class WholePixelBars extends StandardXYBarPainter {
    private static final long serialVersionUID = 1L;
    private static final Color EDGE = new Color(255, 255, 255, 130);
    private static final double EDGE_PX = 0.8;
    /** Height from which on a bar has room for an edge, pixels. */
    private static final double LEAST_PX = 2;

    @Override
    public void paintBar(Graphics2D graphics, XYBarRenderer renderer, int row, int column, RectangularShape bar,
            RectangleEdge base) {
        double left = Math.rint(bar.getMinX());
        double right = Math.rint(bar.getMaxX());
        super.paintBar(graphics, renderer, row, column, new Rectangle2D.Double(left, bar.getY(), right - left, bar.getHeight()),
                base);
        if (bar.getHeight() > LEAST_PX) {
            graphics.setPaint(EDGE);
            graphics.fill(new Rectangle2D.Double(left, bar.getY(), right - left, EDGE_PX));
        }
    }
}
