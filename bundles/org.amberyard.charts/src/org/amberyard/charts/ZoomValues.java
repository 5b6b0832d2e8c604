package org.amberyard.charts;

import java.util.List;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.data.Range;

/** The axes of figures along one side; further axes show as much of themselves as the first one does. */
final class ZoomValues implements ZoomAxis {
    /** A set distance of ticks is halved twice where less than this share of the axis is shown. */
    private static final double CLOSE = 0.3;

    private final List<Kept> axes;

    /** An axis as its chart was made. */
    private record Kept(ValueAxis axis, boolean auto, Range range, NumberTickUnit ticks) {

        static Kept of(ValueAxis axis) {
            boolean setTicks = axis instanceof NumberAxis && !axis.isAutoTickUnitSelection();
            return new Kept(axis, axis.isAutoRange(), axis.getRange(), setTicks ? ((NumberAxis) axis).getTickUnit() : null);
        }

        void reset() {
            if (auto) {
                axis.setAutoRange(true);
            } else {
                axis.setRange(range);
            }
        }

        void ticks(double share) {
            if (ticks != null && ticks.getSize() > 1) {
                double size = share < CLOSE ? Math.max(1, ticks.getSize() / 4) : ticks.getSize();
                ((NumberAxis) axis).setTickUnit(new NumberTickUnit(size));
            }
        }
    }

    ZoomValues(List<? extends ValueAxis> axes) {
        this.axes = axes.stream().map(Kept::of).toList();
    }

    /** Those that fit themselves to their figures do so again. */
    @Override
    public void reset() {
        axes.forEach(Kept::reset);
        axes.forEach(kept -> kept.ticks(1));
    }

    /** Fits an axis from zero up, which was made for figures up to a size, to smaller ones with the same headroom. */
    void fit(ValueAxis axis, Range made, Range shown) {
        axes.stream().filter(k -> k.axis() == axis && !k.auto() && k.range().getLowerBound() == 0).findFirst().ifPresent(kept -> {
            if (made != null && shown != null && shown.getUpperBound() > 0 && shown.getUpperBound() < made.getUpperBound()) {
                axis.setRange(0, kept.range().getUpperBound() * shown.getUpperBound() / made.getUpperBound());
            }
        });
    }

    private ValueAxis first() {
        return axes.get(0).axis();
    }

    @Override
    public String label() {
        return axes.isEmpty() ? "" : String.valueOf(first().getLabel());
    }

    @Override
    public Span whole() {
        return axes.isEmpty() ? new Span(0, 1) : span(first());
    }

    private static Span span(ValueAxis axis) {
        return new Span(axis.getRange().getLowerBound(), axis.getRange().getUpperBound());
    }

    @Override
    public void show(Span part) {
        double from = whole().share(part.from());
        double to = whole().share(part.to());
        for (Kept kept : axes) {
            Span shown = span(kept.axis()).part(from, to);
            kept.axis().setRange(shown.from(), shown.to());
            kept.ticks(to - from);
        }
    }

    @Override
    public boolean isReversed() {
        return !axes.isEmpty() && first().isInverted();
    }
}
