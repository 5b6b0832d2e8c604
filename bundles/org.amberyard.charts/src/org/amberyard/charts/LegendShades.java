package org.amberyard.charts;

import java.awt.Color;
import java.awt.Paint;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jfree.chart.LegendItem;
import org.jfree.chart.LegendItemCollection;

/** The items of a legend, of which some step back to grey because what they name is hidden. */
final class LegendShades {
    /** How far what is hidden steps back, of the way from text to ground; its name stays readable. */
    private static final double NAME_STEPPED_BACK = 0.35;
    private static final double MARK_STEPPED_BACK = 0.7;

    private final LegendItemCollection items;
    private final List<Made> made = new ArrayList<>();
    private final Color name;
    private final Color mark;

    /** An item with its paints as they were made. */
    private record Made(LegendItem item, Paint label, Paint fill, Paint line, Paint outline) {

        void paint(Paint newLabel, Paint newFill, Paint newLine, Paint newOutline) {
            item.setLabelPaint(newLabel);
            item.setFillPaint(newFill);
            item.setLinePaint(newLine);
            item.setOutlinePaint(newOutline);
        }
    }

    LegendShades(LegendItemCollection items, Color text, Color ground) {
        this.items = items;
        this.name = ChartTheme.between(text, ground, NAME_STEPPED_BACK);
        this.mark = ChartTheme.between(text, ground, MARK_STEPPED_BACK);
        for (int i = 0; i < items.getItemCount(); i++) {
            LegendItem item = items.get(i);
            made.add(new Made(item, item.getLabelPaint(), item.getFillPaint(), item.getLinePaint(), item.getOutlinePaint()));
        }
    }

    /** Names of the items, in order. */
    List<String> names() {
        return made.stream().map(m -> m.item().getLabel()).toList();
    }

    /** Gives each item that names a series its name as key, by which it is known when it is pointed at. */
    void key(List<String> series) {
        made.forEach(m -> m.item().setSeriesKey(series.contains(m.item().getLabel()) ? m.item().getLabel() : null));
    }

    /** The items, those that are hidden in grey. */
    LegendItemCollection shaded(Set<String> hidden) {
        for (Made one : made) {
            if (hidden.contains(one.item().getLabel())) {
                one.paint(name, mark, mark, mark);
            } else {
                one.paint(one.label(), one.fill(), one.line(), one.outline());
            }
        }
        return items;
    }
}
