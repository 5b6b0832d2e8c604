package org.amberyard.charts;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.ui.RectangleEdge;

/** Axis of the starts of years, of which those are named for which there is room. */
final class YearTimeAxis extends NumberAxis {
    private static final long serialVersionUID = 1L;
    private static final String WIDEST = "2000";

    YearTimeAxis(String label) {
        super(label);
    }

    @Override
    public List<?> refreshTicks(Graphics2D g2, AxisState state, Rectangle2D dataArea, RectangleEdge edge) {
        List<?> ticks = super.refreshTicks(g2, state, dataArea, edge);
        return YearLabels.shown(ticks, g2.getFontMetrics(getTickLabelFont()).stringWidth(WIDEST), dataArea.getWidth());
    }
}
