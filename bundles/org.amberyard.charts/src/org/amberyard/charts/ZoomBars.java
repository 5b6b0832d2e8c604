package org.amberyard.charts;

import org.jfree.chart.axis.CategoryAxis;

/** An axis of bars; its places are numbers of bars from the first one on. */
final class ZoomBars implements ZoomAxis {
    private final CategoryAxis axis;
    private final int count;
    private final boolean reversed;
    private final double lowerMargin;
    private final double upperMargin;
    private final double betweenBars;

    /** @param reversed true when the first bar is at the top */
    ZoomBars(CategoryAxis axis, int count, boolean reversed) {
        this.axis = axis;
        this.count = count;
        this.reversed = reversed;
        this.lowerMargin = axis.getLowerMargin();
        this.upperMargin = axis.getUpperMargin();
        this.betweenBars = axis.getCategoryMargin();
    }

    @Override
    public String label() {
        return String.valueOf(axis.getLabel());
    }

    @Override
    public Span whole() {
        return new Span(0, Math.max(1, count));
    }

    @Override
    public void reset() {
        show(whole());
    }

    /** The axis is drawn as much longer as the part is shorter, with the bars before and behind it in margins below zero. */
    @Override
    public void show(Span part) {
        double from = whole().share(part.from());
        double to = whole().share(part.to());
        axis.setLowerMargin((lowerMargin - from) / (to - from));
        axis.setUpperMargin((upperMargin - (1 - to)) / (to - from));
        axis.setCategoryMargin(betweenBars / (to - from));
    }

    @Override
    public boolean isReversed() {
        return reversed;
    }
}
