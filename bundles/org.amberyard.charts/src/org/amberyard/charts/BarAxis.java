package org.amberyard.charts;

import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import java.util.function.Supplier;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.SubCategoryAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.text.TextBlock;
import org.jfree.chart.ui.RectangleEdge;

/** Axis of bars of which a part may be shown: margins below zero put the first and last bars outside, and nothing is written there. */
class BarAxis extends CategoryAxis {
    private static final long serialVersionUID = 1L;

    @Override
    public AxisState draw(Graphics2D g2, double cursor, Rectangle2D plotArea, Rectangle2D dataArea, RectangleEdge edge,
            PlotRenderingInfo info) {
        return clipped(g2, this, plotArea, dataArea, edge, () -> super.draw(g2, cursor, plotArea, dataArea, edge, info));
    }

    private static AxisState clipped(Graphics2D g2, CategoryAxis axis, Rectangle2D plotArea, Rectangle2D dataArea, RectangleEdge edge,
            Supplier<AxisState> drawing) {
        Shape before = g2.getClip();
        clip(g2, axis, plotArea, dataArea, edge);
        AxisState state = drawing.get();
        g2.setClip(before);
        return state;
    }

    private static void clip(Graphics2D g2, CategoryAxis axis, Rectangle2D plotArea, Rectangle2D dataArea, RectangleEdge edge) {
        if (axis.getLowerMargin() >= 0 && axis.getUpperMargin() >= 0) {
            return;
        }
        if (RectangleEdge.isTopOrBottom(edge)) {
            g2.clip(new Rectangle2D.Double(dataArea.getX(), plotArea.getY(), dataArea.getWidth(), plotArea.getHeight()));
        } else {
            g2.clip(new Rectangle2D.Double(plotArea.getX(), dataArea.getY(), plotArea.getWidth(), dataArea.getHeight()));
        }
    }

    /** The same of years, of which those are named for which there is room. */
    static final class OfYears extends BarAxis {
        private static final long serialVersionUID = 1L;

        @Override
        protected TextBlock createLabel(Comparable category, float width, RectangleEdge edge, Graphics2D g2) {
            return YearLabels.shown(this, category, super.createLabel(category, Float.MAX_VALUE, edge, g2), width, g2);
        }
    }

    /** The same of years with a second row of names. */
    static final class WithLetters extends SubCategoryAxis {
        private static final long serialVersionUID = 1L;

        WithLetters() {
            super(null);
        }

        @Override
        protected TextBlock createLabel(Comparable category, float width, RectangleEdge edge, Graphics2D g2) {
            return YearLabels.shown(this, category, super.createLabel(category, Float.MAX_VALUE, edge, g2), width, g2);
        }

        @Override
        public AxisState draw(Graphics2D g2, double cursor, Rectangle2D plotArea, Rectangle2D dataArea, RectangleEdge edge,
                PlotRenderingInfo info) {
            return clipped(g2, this, plotArea, dataArea, edge, () -> super.draw(g2, cursor, plotArea, dataArea, edge, info));
        }
    }
}
