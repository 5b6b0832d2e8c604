package org.amberyard.charts;

import java.awt.Color;
import java.awt.Paint;
import java.util.List;
import org.jfree.chart.renderer.PaintScale;

/** A colour for each cell, found by its number. */
record CellPaints(List<Color> cells) implements PaintScale {

    @Override
    public double getLowerBound() {
        return 0;
    }

    @Override
    public double getUpperBound() {
        return cells.size();
    }

    @Override
    public Paint getPaint(double number) {
        return cells.get((int) number);
    }
}
