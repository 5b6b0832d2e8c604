package org.amberyard.charts;

import java.awt.Graphics2D;
import java.util.List;
import java.util.stream.IntStream;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.text.TextBlock;

/** Which years of an axis are named: all where there is room, else every second, third and so on, from the first. */
final class YearLabels {
    private static final double GAP = 4;

    private YearLabels() {
    }

    /**
     * The label of a year, or an empty one.
     *
     * @param whole the label as long as it is
     * @param room width that a year has
     */
    static TextBlock shown(CategoryAxis axis, Comparable<?> year, TextBlock whole, double room, Graphics2D g2) {
        int place = ((CategoryPlot) axis.getPlot()).getCategories().indexOf(year);
        return place % step(whole.calculateDimensions(g2).getWidth(), room) == 0 ? whole : new TextBlock();
    }

    /** Ticks of years in a length that are named. */
    static List<?> shown(List<?> ticks, double widest, double length) {
        int step = step(widest, length / Math.max(1, ticks.size()));
        return IntStream.range(0, ticks.size()).filter(i -> i % step == 0).mapToObj(ticks::get).toList();
    }

    private static int step(double width, double room) {
        return (int) Math.max(1, Math.ceil((width + GAP) / room));
    }
}
