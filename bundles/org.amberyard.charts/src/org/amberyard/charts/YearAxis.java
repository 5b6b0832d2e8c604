package org.amberyard.charts;

import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.CategoryLabelPosition;
import org.jfree.chart.axis.CategoryLabelPositions;
import org.jfree.chart.axis.CategoryLabelWidthType;
import org.jfree.chart.text.TextBlockAnchor;
import org.jfree.chart.ui.RectangleAnchor;

/** Axis of years as bars have it: each year by its number, without thousands separators. */
final class YearAxis {
    /** Width of a year's label over that of its bars. */
    private static final float WIDEST_YEAR = 1.35f;

    private YearAxis() {
    }

    static CategoryAxis of(ChartTheme theme) {
        CategoryAxis axis = new BarAxis.OfYears();
        ChartFrame.style(axis, theme);
        axis.setCategoryMargin(0.25);
        axis.setLowerMargin(0.01);
        axis.setUpperMargin(0.01);
        axis.setTickMarksVisible(false);
        axis.setCategoryLabelPositions(positions());
        return axis;
    }

    /** Years may reach over the room between their bars. */
    static CategoryLabelPositions positions() {
        return CategoryLabelPositions.replaceBottomPosition(CategoryLabelPositions.STANDARD, new CategoryLabelPosition(RectangleAnchor.TOP,
                TextBlockAnchor.TOP_CENTER, CategoryLabelWidthType.CATEGORY, WIDEST_YEAR));
    }
}
