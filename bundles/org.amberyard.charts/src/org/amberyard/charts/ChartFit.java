package org.amberyard.charts;

import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.Axis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.Plot;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;

/**
 * Makes a chart legible at a size: as high as its plots need beside their words, and with titles of axes no longer than the axes.
 * Titles are whole again when it is closed.
 */
public final class ChartFit implements AutoCloseable {
    /** Height of a plot below which it cannot be read, in pixels. */
    private static final double LEAST_PLOT = 80;
    /** Of several plots one below the other. */
    private static final double LEAST_OF_SEVERAL = 56;
    private static final int MOST_ROUNDS = 5;
    /** Share of a title that is enough to tell it. */
    private static final double LEAST_TOLD = 0.6;

    private final JFreeChart chart;
    private final Map<Axis, String> whole = new LinkedHashMap<>();
    private double height;

    private ChartFit(JFreeChart chart) {
        this.chart = chart;
    }

    /** Fits a chart into a width; its height is that given, or more where it could not be read. */
    public static ChartFit of(JFreeChart chart, double width, double height) {
        ChartFit fit = new ChartFit(chart);
        Graphics2D graphics = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();
        ChartHints.set(graphics);
        try {
            fit.fit(graphics, width, height);
        } finally {
            graphics.dispose();
        }
        return fit;
    }

    /** The height at which it can be read. */
    public double height() {
        return height;
    }

    private void fit(Graphics2D graphics, double width, double least) {
        height = least;
        List<Rectangle2D> areas = areas(graphics, width, height);
        // Words take more room where there is more; a few rounds settle it.
        for (int round = 0; round < MOST_ROUNDS && lacking(areas) > 0; round++) {
            height += lacking(areas) * areas.size();
            areas = areas(graphics, width, height);
        }
        List<Plot> plots = plots();
        for (int plot = 0; plot < Math.min(plots.size(), areas.size()); plot++) {
            double length = areas.get(plot).getHeight();
            vertical(plots.get(plot)).forEach(axis -> shorten(axis, graphics.getFontMetrics(axis.getLabelFont()), length));
        }
    }

    private static double lacking(List<Rectangle2D> areas) {
        double needed = areas.size() > 1 ? LEAST_OF_SEVERAL : LEAST_PLOT;
        return Math.ceil(areas.stream().mapToDouble(a -> needed - a.getHeight()).max().orElse(0));
    }

    private List<Plot> plots() {
        return chart.getPlot() instanceof CombinedDomainXYPlot several ? List.copyOf(several.getSubplots()) : List.of(chart.getPlot());
    }

    private List<Rectangle2D> areas(Graphics2D graphics, double width, double height) {
        ChartRenderingInfo info = new ChartRenderingInfo();
        chart.draw(graphics, new Rectangle2D.Double(0, 0, width, height), info);
        PlotRenderingInfo plot = info.getPlotInfo();
        List<Rectangle2D> areas = new ArrayList<>();
        for (int part = 0; part < plot.getSubplotCount(); part++) {
            areas.add(plot.getSubplotInfo(part).getDataArea());
        }
        return areas.isEmpty() ? List.of(plot.getDataArea()) : areas;
    }

    private static Stream<Axis> vertical(Plot plot) {
        List<Axis> axes = new ArrayList<>();
        if (plot instanceof XYPlot xy) {
            boolean upright = xy.getOrientation() == PlotOrientation.VERTICAL;
            for (int i = 0; i < (upright ? xy.getRangeAxisCount() : xy.getDomainAxisCount()); i++) {
                axes.add(upright ? xy.getRangeAxis(i) : xy.getDomainAxis(i));
            }
        } else if (plot instanceof CategoryPlot bars) {
            boolean upright = bars.getOrientation() == PlotOrientation.VERTICAL;
            for (int i = 0; i < (upright ? bars.getRangeAxisCount() : bars.getDomainAxisCount()); i++) {
                axes.add(upright ? bars.getRangeAxis(i) : bars.getDomainAxis(i));
            }
        }
        return axes.stream().filter(a -> a != null && a.getLabel() != null);
    }

    private void shorten(Axis axis, FontMetrics font, double length) {
        String title = axis.getLabel();
        if (font.stringWidth(title) > length) {
            whole.put(axis, title);
            axis.setLabel(shorter(title).filter(t -> font.stringWidth(t) <= length).findFirst().orElse(""));
        }
    }

    /** Without what is said beside the unit, then the unit alone; one without unit letter by letter, as long as it can be told what it was. */
    private static Stream<String> shorter(String title) {
        int open = title.lastIndexOf('(');
        int comma = title.indexOf(',', Math.max(0, open));
        String plain = open > 0 && comma > 0 && title.endsWith(")") ? title.substring(0, comma) + ")" : title;
        return open > 0 ? Stream.of(plain, plain.substring(open + 1, plain.length() - 1))
                : IntStream.iterate(title.length() - 1, length -> length > LEAST_TOLD * title.length(), length -> length - 1)
                        .mapToObj(length -> title.substring(0, length).strip() + "…");
    }

    @Override
    public void close() {
        whole.forEach(Axis::setLabel);
        whole.clear();
    }
}
