package org.amberyard.charts;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RectangularShape;
import org.jfree.chart.renderer.xy.StandardXYBarPainter;
import org.jfree.chart.renderer.xy.XYBarRenderer;
import org.jfree.chart.ui.RectangleEdge;

/** Bars whose sides stand on whole pixels, so that no gap shines through between neighbours. */
final class WholePixelBars extends StandardXYBarPainter {
    private static final long serialVersionUID = 1L;

    @Override
    public void paintBar(Graphics2D graphics, XYBarRenderer renderer, int row, int column, RectangularShape bar,
            RectangleEdge base) {
        double left = Math.rint(bar.getMinX());
        super.paintBar(graphics, renderer, row, column,
                new Rectangle2D.Double(left, bar.getY(), Math.rint(bar.getMaxX()) - left, bar.getHeight()), base);
    }
}
