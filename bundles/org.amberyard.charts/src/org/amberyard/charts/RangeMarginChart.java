package org.amberyard.charts;

import java.util.List;
import java.util.Optional;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.annotations.CategoryTextAnnotation;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.entity.CategoryItemEntity;
import org.jfree.chart.entity.ChartEntity;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.category.DefaultCategoryDataset;

/** How far above the reserve the battery stays on the worst operated day, by route, with a new and an aged pack. */
public final class RangeMarginChart {
    private static final String TITLE = "Range margin on the worst operated day";
    private static final int HEIGHT_AROUND = 170;
    private static final int HEIGHT_PER_ROUTE = 22;

    private final StudyResult result;
    private final RangeMargins margins;
    private final UnitSystem system;
    private final ChartTheme theme;

    private RangeMarginChart(StudyResult result, int plan, UnitSystem system, ChartTheme theme) {
        this.result = result;
        this.margins = new RangeMargins(result, plan, system);
        this.system = system;
        this.theme = theme;
    }

    /** The chart of the first plan that is compared with the baseline, else of the baseline. */
    public static Chart of(StudyResult result, UnitSystem system, ChartTheme theme) {
        return of(result, FirstPlan.of(result), system, theme);
    }

    /** The chart of a plan by its place in the study. */
    public static Chart of(StudyResult result, int plan, UnitSystem system, ChartTheme theme) {
        RangeMarginChart build = new RangeMarginChart(result, plan, system, theme);
        int height = HEIGHT_AROUND + HEIGHT_PER_ROUTE * build.margins.rows().size();
        return new Chart("range_margin", TITLE, build.chart(), build.margins.sentences(), build.margins.data(), height,
                ChartFrame.least(height), build::subject);
    }

    private Optional<Subject> subject(ChartEntity entity) {
        return entity instanceof CategoryItemEntity bar
                ? margins.rows().stream().filter(r -> r.label().equals(bar.getColumnKey())).findFirst()
                        .map(r -> new Subject(Subject.Kind.ROUTE, r.answer().route()))
                : Optional.empty();
    }

    private JFreeChart chart() {
        MarginBars bars = new MarginBars(theme);
        bars.setDefaultToolTipGenerator((data, series, route) -> margins.tip(margins.rows().get(route)));
        CategoryPlot plot = new CategoryPlot(dataset(), routeAxis(), marginAxis(), bars);
        plot.setOrientation(PlotOrientation.HORIZONTAL);
        plot.setRangeAxisLocation(AxisLocation.BOTTOM_OR_LEFT);
        ChartFrame.style(plot, theme);
        plot.setFixedLegendItems(legend());
        for (RangeMargins.Row row : margins.rows()) {
            plot.addAnnotation(note(row));
        }
        return ChartFrame.around(plot, TITLE, margins.caption(), theme);
    }

    private DefaultCategoryDataset dataset() {
        DefaultCategoryDataset dataset = new DefaultCategoryDataset();
        for (RangeMargins.Row row : margins.rows()) {
            dataset.addValue(row.whenNew(), "New pack", row.label());
            dataset.addValue(row.whenAged(), "Aged pack", row.label());
        }
        return dataset;
    }

    private CategoryAxis routeAxis() {
        CategoryAxis axis = new BarAxis();
        ChartFrame.style(axis, theme);
        axis.setMaximumCategoryLabelWidthRatio(0.4f);
        axis.setCategoryMargin(0.2);
        axis.setLowerMargin(0.01);
        axis.setUpperMargin(0.01);
        axis.setTickMarksVisible(false);
        return axis;
    }

    private NumberAxis marginAxis() {
        String unit = Unit.KILOMETRE.symbol(system, result.input().currency());
        NumberAxis axis = ChartFrame.valueAxis("Distance left above the reserve (" + unit + "); below zero the route fails",
                Figures.pattern("0;−0"), theme);
        double low = Math.min(0, margins.least());
        double high = Math.max(1, margins.most());
        axis.setRange(low - 0.04 * (high - low), high + 0.32 * (high - low));
        return axis;
    }

    private CategoryTextAnnotation note(RangeMargins.Row row) {
        double from = row.whenNew() == null ? 0 : Math.max(0, row.whenNew());
        CategoryTextAnnotation note = new CategoryTextAnnotation("  " + row.note(), row.label(), from);
        note.setTextAnchor(TextAnchor.CENTER_LEFT);
        note.setFont(theme.tickFont());
        note.setPaint(theme.text());
        return note;
    }

    private LegendItemCollection legend() {
        LegendItemCollection items = new LegendItemCollection();
        for (boolean aged : List.of(false, true)) {
            String pack = aged ? "aged pack (narrow)" : "new pack (wide)";
            items.add(ChartFrame.swatch("Passes, " + pack, theme.passes(!aged)));
            items.add(ChartFrame.swatch("Fails, " + pack, theme.fails(!aged)));
        }
        return items;
    }
}
