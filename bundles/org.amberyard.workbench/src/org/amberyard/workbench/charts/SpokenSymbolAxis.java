package org.amberyard.workbench.charts;

import java.util.Arrays;
import org.amberyard.workbench.language.Words;
import org.jfree.chart.axis.SymbolAxis;

/** An axis of names that are said in the language of the window, such as months. */
final class SpokenSymbolAxis extends SymbolAxis {
    private static final long serialVersionUID = 1L;

    /** An axis that looks like one that a chart was made with. */
    SpokenSymbolAxis(SymbolAxis made) {
        super(made.getLabel(), Arrays.stream(made.getSymbols()).map(Words::say).toArray(String[]::new));
        setLabelFont(made.getLabelFont());
        setLabelPaint(made.getLabelPaint());
        setTickLabelFont(made.getTickLabelFont());
        setTickLabelPaint(made.getTickLabelPaint());
        setTickMarksVisible(made.isTickMarksVisible());
        setTickMarkPaint(made.getTickMarkPaint());
        setAxisLinePaint(made.getAxisLinePaint());
        setAxisLineVisible(made.isAxisLineVisible());
        setGridBandsVisible(made.isGridBandsVisible());
        setVerticalTickLabels(made.isVerticalTickLabels());
        setInverted(made.isInverted());
        setRange(made.getRange());
    }
}
