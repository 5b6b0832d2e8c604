package org.amberyard.charts;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.util.List;
import org.amberyard.core.battery.PackReplacement;
import org.jfree.chart.LegendItem;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.chart.util.ShapeUtils;

/** How lines and marks of packs look, and what the legend says of them. */
final class PackStyle {
    private static final float MARK = 6;
    private static final float STRONG = 4;
    /** Opacity of what is not picked, of 255. */
    private static final int PALE = 110;

    private final PackCapacities capacities;
    private final List<PackCapacities.Bus> picked;
    private final List<Integer> types;
    private final ChartTheme theme;

    /** Looks of some packs, of which the buses that are picked stand out. */
    PackStyle(PackCapacities capacities, List<PackCapacities.Bus> picked, ChartTheme theme) {
        this.capacities = capacities;
        this.picked = picked;
        this.types = capacities.list().stream().map(PackCapacities.Bus::type).distinct().sorted().toList();
        this.theme = theme;
    }

    /** Colour of the type, pale for a bus that stands behind one that is picked. */
    Color paint(PackCapacities.Bus bus) {
        Color full = theme.plan(types.indexOf(bus.type()) + 1);
        return picked.isEmpty() || picked.contains(bus) ? full : new Color(full.getRed(), full.getGreen(), full.getBlue(), PALE);
    }

    Stroke stroke(PackCapacities.Bus bus) {
        return picked.contains(bus) ? new BasicStroke(STRONG) : theme.planStroke(types.indexOf(bus.type()));
    }

    /** The name of a bus below the end of its line. */
    XYTextAnnotation label(PackCapacities.Bus bus) {
        PackCapacities.Point last = bus.points().get(bus.points().size() - 1);
        XYTextAnnotation label = new XYTextAnnotation(bus.unit() + " ", last.time(), 100 * last.health());
        label.setTextAnchor(TextAnchor.TOP_RIGHT);
        label.setFont(theme.labelFont().deriveFont(Font.BOLD));
        label.setPaint(theme.text());
        return label;
    }

    static Shape mark(PackReplacement.Cause cause) {
        return switch (cause) {
            case CYCLE_LIMIT -> ShapeUtils.createDiamond(MARK);
            case CAPACITY -> ShapeUtils.createDownTriangle(MARK);
            case DUTY -> ShapeUtils.createUpTriangle(MARK);
            case AGE -> new Ellipse2D.Double(-MARK / 2, -MARK / 2, MARK, MARK);
        };
    }

    static String words(PackReplacement.Cause cause) {
        return "Pack at its end: " + cause.label();
    }

    /** What the legend calls the line of a bus. */
    String legend(PackCapacities.Bus bus) {
        return picked.contains(bus) ? bus.unit() + " in place " + capacities.place(bus.place()) : capacities.type(bus.type());
    }

    LegendItemCollection legend() {
        LegendItemCollection items = new LegendItemCollection();
        picked.forEach(bus -> items.add(new LegendItem(legend(bus), null, null,
                null, new Line2D.Double(-9, 0, 9, 0), new BasicStroke(STRONG), paint(bus))));
        types.forEach(t -> items.add(ChartFrame.swatch(capacities.type(t), theme.plan(types.indexOf(t) + 1))));
        capacities.ends().stream().map(PackCapacities.End::cause).distinct().sorted().forEach(cause -> items.add(new LegendItem(
                words(cause), null, null, null, mark(cause), theme.text(), new BasicStroke(1),
                theme.text())));
        return items;
    }
}
