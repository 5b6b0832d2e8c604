package org.amberyard.charts;

import java.awt.BasicStroke;
import java.awt.Paint;
import java.util.List;
import java.util.function.Function;
import org.amberyard.core.plan.StudyResult;
import org.jfree.chart.axis.SubCategoryAxis;
import org.jfree.chart.labels.CategoryToolTipGenerator;
import org.jfree.chart.renderer.category.GroupedStackedBarRenderer;
import org.jfree.chart.renderer.category.StandardBarPainter;
import org.jfree.data.KeyToGroupMap;

/** Stacked bars of each year with the plans side by side under letters. */
final class PlansByYear {
    private static final int LETTERS = 26;

    private PlansByYear() {
    }

    /** A subtitle with the letters of the plans; with a single plan, its name. */
    static String subtitle(String opening, StudyResult result) {
        if (result.plans().size() < 2) {
            return opening + "; " + result.baseline().name();
        }
        StringBuilder key = new StringBuilder(opening);
        for (int plan = 0; plan < result.plans().size(); plan++) {
            key.append("    ").append(letter(plan)).append(" = ").append(result.plans().get(plan).name());
        }
        return key.toString();
    }

    private static String letter(int plan) {
        return String.valueOf((char) ('A' + plan % LETTERS));
    }

    /** The years, with the letters of the plans below each. */
    static SubCategoryAxis axis(StudyResult result, ChartTheme theme) {
        SubCategoryAxis axis = new BarAxis.WithLetters();
        ChartFrame.style(axis, theme);
        axis.setSubLabelFont(theme.tickFont());
        axis.setSubLabelPaint(theme.quietText());
        axis.setCategoryMargin(0.2);
        axis.setCategoryLabelPositions(YearAxis.positions());
        axis.setLowerMargin(0.01);
        axis.setUpperMargin(0.01);
        axis.setTickMarksVisible(false);
        if (result.plans().size() > 1) {
            for (int plan = 0; plan < result.plans().size(); plan++) {
                axis.addSubCategory(letter(plan));
            }
        }
        return axis;
    }

    /** Bars of parts in the order of their keys, each part in its colour. */
    static <T extends Enum<T>> GroupedStackedBarRenderer renderer(List<PlanPart<T>> keys, Function<T, Paint> paint,
            CategoryToolTipGenerator tips, ChartTheme theme) {
        GroupedStackedBarRenderer renderer = new GroupedStackedBarRenderer();
        renderer.setBarPainter(new StandardBarPainter());
        renderer.setShadowVisible(false);
        renderer.setItemMargin(0.06);
        renderer.setDrawBarOutline(true);
        renderer.setDefaultOutlineStroke(new BasicStroke(0.4f));
        renderer.setDefaultToolTipGenerator(tips);
        KeyToGroupMap groups = new KeyToGroupMap(0);
        for (int row = 0; row < keys.size(); row++) {
            groups.mapKeyToGroup(keys.get(row), keys.get(row).plan());
            renderer.setSeriesPaint(row, paint.apply(keys.get(row).part()));
            renderer.setSeriesOutlinePaint(row, theme.background());
        }
        renderer.setSeriesToGroupMap(groups);
        return renderer;
    }
}
