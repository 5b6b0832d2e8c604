package org.amberyard.charts;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jfree.chart.annotations.AbstractAnnotation;
import org.jfree.chart.annotations.CategoryAnnotation;
import org.jfree.chart.annotations.XYAnnotation;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.text.G2TextMeasurer;
import org.jfree.chart.text.TextBlock;
import org.jfree.chart.text.TextBlockAnchor;
import org.jfree.chart.text.TextUtils;
import org.jfree.chart.ui.HorizontalAlignment;
import org.jfree.chart.ui.Size2D;

/** Notes over a plot: a ring around the place that each speaks of, and its words in a box, clear of data and other boxes if there is room. */
final class RemarkLayer extends AbstractAnnotation implements XYAnnotation, CategoryAnnotation {
    private static final long serialVersionUID = 1L;
    private static final double RING = 4;
    private static final double AWAY = 14;
    private static final double PADDING = 4;
    private static final double WIDEST = 190;
    /** A box takes no more of the width of a plot than this. */
    private static final double WIDEST_SHARE = 0.45;
    /** Steps across the plot and down it in which a free place is looked for. */
    private static final int PLACES = 12;

    private final transient List<Placed> remarks;
    private final transient Look look;

    /**
     * A note and where it belongs.
     *
     * @param text its words
     * @param share shares of the width of the plot from the left and of its height from the bottom; empty for a note whose place
     *        the chart does not have
     */
    record Placed(String text, Optional<Point2D> share) {

        boolean isShown() {
            return share.map(p -> inside(p.getX()) && inside(p.getY())).orElse(true);
        }

        private static boolean inside(double share) {
            return share >= 0 && share <= 1;
        }
    }

    /** What a box must not cover: data, and boxes that are there already. */
    private record Room(DataInk ink, List<Rectangle2D> taken) {

        boolean isFree(Rectangle2D box) {
            return taken.stream().noneMatch(box::intersects);
        }
    }

    /** Ground and ink of the boxes, and their font. */
    record Look(Color ground, Color ink, Font font) {
    }

    RemarkLayer(List<Placed> remarks, Look look) {
        this.remarks = remarks.stream().filter(Placed::isShown).toList();
        this.look = look;
    }

    @Override
    public void draw(Graphics2D graphics, XYPlot plot, Rectangle2D area, ValueAxis domain, ValueAxis range, int renderer,
            PlotRenderingInfo info) {
        draw(graphics, area, DataInk.of(plot, area, domain, range));
    }

    @Override
    public void draw(Graphics2D graphics, CategoryPlot plot, Rectangle2D area, CategoryAxis domain, ValueAxis range) {
        draw(graphics, area, DataInk.of(plot, area, domain, range));
    }

    private void draw(Graphics2D graphics, Rectangle2D area, DataInk ink) {
        graphics.setFont(look.font());
        graphics.setStroke(new BasicStroke(1));
        List<Rectangle2D> taken = new ArrayList<>();
        for (Placed remark : remarks) {
            taken.add(draw(graphics, area, remark, new Room(ink, taken)));
        }
    }

    private Rectangle2D draw(Graphics2D graphics, Rectangle2D area, Placed remark, Room room) {
        TextBlock words = TextUtils.createTextBlock(remark.text(), look.font(), look.ink(),
                (float) Math.min(WIDEST, WIDEST_SHARE * area.getWidth()), new G2TextMeasurer(graphics));
        words.setLineAlignment(HorizontalAlignment.LEFT);
        Size2D size = words.calculateDimensions(graphics);
        Optional<Point2D> place = remark.share().map(s -> new Point2D.Double(area.getX() + s.getX() * area.getWidth(),
                area.getMaxY() - s.getY() * area.getHeight()));
        Rectangle2D box = box(area, place, new Size2D(size.getWidth() + 2 * PADDING, size.getHeight() + 2 * PADDING), room);
        place.ifPresent(p -> drawPointer(graphics, p, box));
        drawBox(graphics, box);
        words.draw(graphics, (float) (box.getX() + PADDING), (float) (box.getY() + PADDING), TextBlockAnchor.TOP_LEFT);
        return box;
    }

    private void drawPointer(Graphics2D graphics, Point2D place, Rectangle2D box) {
        graphics.setPaint(look.ink());
        graphics.draw(new Line2D.Double(place.getX(), place.getY(), box.getCenterX(), box.getCenterY()));
        Ellipse2D ring = new Ellipse2D.Double(place.getX() - RING, place.getY() - RING, 2 * RING, 2 * RING);
        graphics.setPaint(look.ground());
        graphics.fill(ring);
        graphics.setPaint(look.ink());
        graphics.draw(ring);
    }

    private void drawBox(Graphics2D graphics, Rectangle2D box) {
        graphics.setPaint(look.ground());
        graphics.fill(box);
        graphics.setPaint(look.ink());
        graphics.draw(box);
    }

    /**
     * Above and to the right of its place if it can be, else the nearest where it meets no other and covers no data, or as little as
     * can be; a note without a place goes to the upper left.
     */
    private static Rectangle2D box(Rectangle2D area, Optional<Point2D> place, Size2D size, Room room) {
        Point2D at = place.orElseGet(() -> new Point2D.Double(area.getX(), area.getY()));
        Stream<Rectangle2D> near = Stream.iterate(1, i -> i + 1).limit(1 + room.taken().size())
                .flatMap(ring -> around(at, ring, size.getWidth(), size.getHeight()));
        List<Rectangle2D> choices = Stream.concat(near, everywhere(area, at, size)).map(box -> within(area, box)).toList();
        return choices.stream().filter(room::isFree).filter(box -> !box.contains(at)).min(Comparator.comparingLong(room.ink()::in))
                .orElse(choices.get(0));
    }

    /** Places over all of the plot, the nearest first. */
    private static Stream<Rectangle2D> everywhere(Rectangle2D area, Point2D at, Size2D size) {
        return IntStream.rangeClosed(0, PLACES * PLACES + 2 * PLACES)
                .mapToObj(i -> new Rectangle2D.Double(area.getX() + (i % (PLACES + 1)) * (area.getWidth() - size.getWidth()) / PLACES,
                        area.getY() + (i / (PLACES + 1)) * (area.getHeight() - size.getHeight()) / PLACES, size.getWidth(), size.getHeight()))
                .sorted(Comparator.comparingDouble(box -> at.distance(box.getCenterX(), box.getCenterY()))).map(box -> box);
    }

    private static Stream<Rectangle2D> around(Point2D at, int ring, double width, double height) {
        double beside = AWAY + (ring - 1) * (width + PADDING);
        double above = AWAY + (ring - 1) * (height + PADDING);
        double right = at.getX() + beside;
        double left = at.getX() - beside - width;
        double up = at.getY() - above - height;
        double down = at.getY() + above;
        return Stream.of(new Rectangle2D.Double(right, up, width, height), new Rectangle2D.Double(left, up, width, height),
                new Rectangle2D.Double(right, down, width, height), new Rectangle2D.Double(left, down, width, height));
    }

    private static Rectangle2D within(Rectangle2D area, Rectangle2D box) {
        double x = Math.max(area.getX() + 1, Math.min(box.getX(), area.getMaxX() - box.getWidth() - 1));
        double y = Math.max(area.getY() + 1, Math.min(box.getY(), area.getMaxY() - box.getHeight() - 1));
        return new Rectangle2D.Double(x, y, box.getWidth(), box.getHeight());
    }
}
