package org.amberyard.charts;

import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.amberyard.core.whatif.ContourLine;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleEdge;

/**
 * The amounts of lines, each on its line and none over another: as near the middle of its line as there is room, and left out where
 * there is none.
 */
final class ContourLabels extends AbstractXYAnnotation {
    private static final int MARGIN = 2;

    private final transient ChartTheme theme;
    private final transient List<Label> labels = new ArrayList<>();

    /** An amount and the points of its line. */
    record Label(String amount, List<ContourLine.Point> points) {
    }

    ContourLabels(ChartTheme theme) {
        this.theme = theme;
    }

    void add(String amount, List<ContourLine.Point> points) {
        labels.add(new Label(amount, points));
    }

    /** The amounts, in the order in which they find room. */
    List<Label> labels() {
        return List.copyOf(labels);
    }

    @Override
    public void draw(Graphics2D graphics, XYPlot plot, Rectangle2D area, ValueAxis across, ValueAxis upward, int renderer,
            PlotRenderingInfo info) {
        graphics.setFont(theme.tickFont());
        int ascent = graphics.getFontMetrics().getAscent();
        boxes(graphics, area, across, upward).forEach((label, box) -> {
            graphics.setPaint(theme.background());
            graphics.fill(box);
            graphics.setPaint(theme.text());
            graphics.drawString(label.amount(), (float) box.getX() + MARGIN, (float) box.getY() + MARGIN + ascent);
        });
    }

    /** Places of the amounts that find room in an area. */
    Map<Label, Rectangle2D> boxes(Graphics2D graphics, Rectangle2D area, ValueAxis across, ValueAxis upward) {
        FontMetrics font = graphics.getFontMetrics(theme.tickFont());
        Map<Label, Rectangle2D> boxes = new LinkedHashMap<>();
        labels.forEach(label -> room(label, font, area, across, upward, List.copyOf(boxes.values())).ifPresent(box -> boxes.put(label, box)));
        return boxes;
    }

    private static Optional<Rectangle2D> room(Label label, FontMetrics font, Rectangle2D area, ValueAxis across, ValueAxis upward,
            List<Rectangle2D> taken) {
        double width = font.stringWidth(label.amount()) + 2 * MARGIN;
        double height = font.getAscent() + font.getDescent() + 2 * MARGIN;
        int middle = label.points().size() / 2;
        return IntStream.range(0, label.points().size()).boxed().sorted(Comparator.comparingInt(i -> Math.abs(i - middle)))
                .map(label.points()::get)
                .<Rectangle2D>map(at -> new Rectangle2D.Double(across.valueToJava2D(at.first(), area, RectangleEdge.BOTTOM) - width / 2,
                        upward.valueToJava2D(at.second(), area, RectangleEdge.LEFT) - height / 2, width, height))
                .filter(box -> area.contains(box) && taken.stream().noneMatch(box::intersects)).findFirst();
    }
}
