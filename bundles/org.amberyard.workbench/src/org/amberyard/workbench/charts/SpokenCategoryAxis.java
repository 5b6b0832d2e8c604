package org.amberyard.workbench.charts;

import java.awt.Graphics2D;
import org.amberyard.workbench.language.Words;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.text.TextBlock;
import org.jfree.chart.ui.RectangleEdge;

/** An axis of bars whose names are said in the language of the window; the bars keep their names in the data. */
final class SpokenCategoryAxis extends CategoryAxis {
    private static final long serialVersionUID = 1L;

    /** An axis that looks like one that a chart was made with. */
    SpokenCategoryAxis(CategoryAxis made) {
        super(made.getLabel());
        setLabelFont(made.getLabelFont());
        setLabelPaint(made.getLabelPaint());
        setTickLabelFont(made.getTickLabelFont());
        setTickLabelPaint(made.getTickLabelPaint());
        setTickLabelsVisible(made.isTickLabelsVisible());
        setTickLabelInsets(made.getTickLabelInsets());
        setTickMarksVisible(made.isTickMarksVisible());
        setTickMarkPaint(made.getTickMarkPaint());
        setAxisLinePaint(made.getAxisLinePaint());
        setAxisLineVisible(made.isAxisLineVisible());
        setLowerMargin(made.getLowerMargin());
        setUpperMargin(made.getUpperMargin());
        setCategoryMargin(made.getCategoryMargin());
        setMaximumCategoryLabelLines(made.getMaximumCategoryLabelLines());
        setMaximumCategoryLabelWidthRatio(made.getMaximumCategoryLabelWidthRatio());
        setCategoryLabelPositions(made.getCategoryLabelPositions());
        setCategoryLabelPositionOffset(made.getCategoryLabelPositionOffset());
    }

    @Override
    protected TextBlock createLabel(Comparable category, float width, RectangleEdge edge, Graphics2D graphics) {
        return super.createLabel(Words.say(category.toString()), width, edge, graphics);
    }
}
