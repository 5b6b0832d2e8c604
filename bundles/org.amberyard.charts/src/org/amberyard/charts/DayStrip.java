package org.amberyard.charts;

import java.awt.BasicStroke;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.text.TextUtils;
import org.jfree.chart.ui.TextAnchor;

/** A block on the strip along the time axis: a run, or a time at the plug; as much of its label as there is room for. */
final class DayStrip extends AbstractXYAnnotation {
    private static final long serialVersionUID = 1L;
    private static final double LABEL_MARGIN = 3;

    private final double fromMin;
    private final double toMin;
    private final Band band;
    private final String label;
    private final boolean atPlug;
    private final transient ChartTheme theme;

    /** Lower and upper edge of the strip on the value axis. */
    record Band(double low, double high) {
    }

    DayStrip(double fromMin, double toMin, Band band, String label, boolean atPlug, ChartTheme theme) {
        this.fromMin = fromMin;
        this.toMin = toMin;
        this.band = band;
        this.label = label;
        this.atPlug = atPlug;
        this.theme = theme;
        setToolTipText(label + ", " + ClockTickFormat.clock(fromMin) + " to " + ClockTickFormat.clock(toMin));
    }

    @Override
    public void draw(Graphics2D graphics, XYPlot plot, Rectangle2D area, ValueAxis time, ValueAxis value, int renderer,
            PlotRenderingInfo info) {
        double left = time.valueToJava2D(fromMin, area, plot.getDomainAxisEdge());
        double right = time.valueToJava2D(toMin, area, plot.getDomainAxisEdge());
        double top = value.valueToJava2D(band.high(), area, plot.getRangeAxisEdge());
        double bottom = value.valueToJava2D(band.low(), area, plot.getRangeAxisEdge());
        Rectangle2D block = new Rectangle2D.Double(left, top, right - left, bottom - top);
        graphics.setPaint(atPlug ? theme.passes(true) : theme.quietText());
        graphics.fill(block);
        graphics.setPaint(atPlug ? theme.passes(false) : theme.quietText());
        graphics.setStroke(new BasicStroke(1));
        graphics.draw(block);
        write(graphics, block);
        if (info != null) {
            addEntity(info, block, renderer, getToolTipText(), getURL());
        }
    }

    private void write(Graphics2D graphics, Rectangle2D block) {
        graphics.setFont(theme.tickFont());
        graphics.setPaint(atPlug ? theme.text() : theme.background());
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
