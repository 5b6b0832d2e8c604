package org.amberyard.charts;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.text.TextUtils;
import org.jfree.chart.ui.TextAnchor;

/** A block on a strip along the time axis: a run, or a time at the plug; as much of its label as there is room for. */
final class DayStrip extends AbstractXYAnnotation {
    private static final long serialVersionUID = 1L;
    private static final double LABEL_MARGIN = 3;

    private final double fromMin;
    private final double toMin;
    private final Band band;
    private final String label;
    private final transient Look look;

    /** Lower and upper edge of the strip on the value axis. */
    record Band(double low, double high) {
    }

    /** Colours of ground, edge and label, and the font of the label. */
    record Look(Color ground, Color edge, Color ink, Font font) {

        /** A run. */
        static Look run(ChartTheme theme) {
            return new Look(theme.quietText(), theme.quietText(), theme.background(), theme.tickFont());
        }

        /** A time at the plug. */
        static Look atPlug(ChartTheme theme) {
            return new Look(theme.passes(true), theme.passes(false), theme.text(), theme.tickFont());
        }
    }

    DayStrip(double fromMin, double toMin, Band band, String label, Look look) {
        this(fromMin, toMin, band, label, label + ", " + ClockTickFormat.clock(fromMin) + " to " + ClockTickFormat.clock(toMin),
                look);
    }

    DayStrip(double fromMin, double toMin, Band band, String label, String tip, Look look) {
        this.fromMin = fromMin;
        this.toMin = toMin;
        this.band = band;
        this.label = label;
        this.look = look;
        setToolTipText(tip);
    }

    @Override
    public void draw(Graphics2D graphics, XYPlot plot, Rectangle2D area, ValueAxis time, ValueAxis value, int renderer,
            PlotRenderingInfo info) {
        double left = time.valueToJava2D(fromMin, area, plot.getDomainAxisEdge());
        double right = time.valueToJava2D(toMin, area, plot.getDomainAxisEdge());
        double top = value.valueToJava2D(band.high(), area, plot.getRangeAxisEdge());
        double bottom = value.valueToJava2D(band.low(), area, plot.getRangeAxisEdge());
        Rectangle2D block = new Rectangle2D.Double(left, top, right - left, bottom - top);
        graphics.setPaint(look.ground());
        graphics.fill(block);
        graphics.setPaint(look.edge());
        graphics.setStroke(new BasicStroke(1));
        graphics.draw(block);
        write(graphics, block);
        if (info != null) {
            addEntity(info, block, renderer, getToolTipText(), getURL());
        }
    }

    private void write(Graphics2D graphics, Rectangle2D block) {
        graphics.setFont(look.font());
        graphics.setPaint(look.ink());
        TextUtils.drawAlignedString(fitting(graphics.getFontMetrics(), block.getWidth() - 2 * LABEL_MARGIN), graphics,
                (float) block.getCenterX(), (float) block.getCenterY(), TextAnchor.CENTER);
    }

    private String fitting(FontMetrics metrics, double width) {
        String text = label;
        while (!text.isEmpty() && metrics.stringWidth(text) > width) {
            text = text.length() <= 2 ? "" : text.substring(0, text.length() - 2) + "…";
        }
        return text;
    }
}
