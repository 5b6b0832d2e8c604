package org.amberyard.charts;

import java.awt.BasicStroke;
import java.awt.Paint;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.core.yard.PortChoice;
import org.amberyard.core.yard.PortCurve;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItem;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.DatasetRenderingOrder;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.util.ShapeUtils;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** Yearly cost of ports and charging over the number of ports, a line for each policy, with the cheapest and what the plan buys. */
public final class PortCountChart {
    private static final String NAME = "port_count";
    private static final String TITLE = "How many ports";
    private static final int HEIGHT = 440;
    private static final double POINT = 5;
    private static final double RING = 13;
    private static final float DIAMOND = 6.5f;
    private static final BasicStroke THIN = new BasicStroke(1.6f);
    private static final double HALF_A_PORT = 0.5;
    private static final double ROOM_FOR_RINGS = 0.12;

    private final PortCounts words;
    private final String currency;
    private final List<PortCurve> curves;
    private final ChartTheme theme;

    private PortCountChart(StudyResult result, int plan, List<PortCurve> curves, ChartTheme theme) {
        this.words = new PortCounts(result, plan, curves);
        this.currency = result.input().currency();
        this.curves = curves;
        this.theme = theme;
    }

    /**
     * The chart of a plan by its place; it says so where the plan has no electric bus. Money has no unit system.
     *
     * @param progress hears of the search for the ports, which may take seconds where it is not known yet
     */
    public static Chart of(StudyResult result, int plan, Progress progress, UnitSystem system, ChartTheme theme) {
        List<PortCurve> curves = result.plans().get(plan).yardComparison().ports(progress);
        PortCountChart build = new PortCountChart(result, plan, curves, theme);
        if (!build.words.any()) {
            return ChartFrame.none(NAME, TITLE, build.words.none(), HEIGHT, theme);
        }
        Subject behind = new Subject(Subject.Kind.PLAN, plan);
        return new Chart(NAME, TITLE, build.chart(), build.words.sentences(), build.words.data(), HEIGHT, ChartFrame.LEAST_HEIGHT,
                entity -> Optional.of(behind));
    }

    private JFreeChart chart() {
        XYPlot plot = new XYPlot(null, portAxis(), moneyAxis(), null);
        ChartFrame.style(plot, theme);
        for (int line = 0; line < curves.size(); line++) {
            PortCurve curve = curves.get(line);
            add(plot, curve, curve.byNumber(), lines(line));
            add(plot, curve, curve.cheapest().stream().toList(), marks(line, ring(), theme.background()));
            add(plot, curve, curve.bought().stream().toList(), marks(line, diamond(), theme.plan(line)));
        }
        plot.setDatasetRenderingOrder(DatasetRenderingOrder.FORWARD);
        plot.setFixedLegendItems(legend());
        return ChartFrame.around(plot, TITLE, words.caption(), theme);
    }

    private void add(XYPlot plot, PortCurve curve, List<PortChoice> choices, XYLineAndShapeRenderer renderer) {
        XYSeries series = new XYSeries(curve.policy().label(), false, true);
        choices.forEach(c -> series.add(c.mix().ports(), c.cost()));
        renderer.setDefaultToolTipGenerator((data, row, point) -> words.tip(curve, choices.get(point)));
        int index = plot.getDatasetCount();
        plot.setDataset(index, new XYSeriesCollection(series));
        plot.setRenderer(index, renderer);
    }

    private XYLineAndShapeRenderer lines(int line) {
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, true);
        renderer.setSeriesPaint(0, theme.plan(line));
        renderer.setSeriesStroke(0, theme.planStroke(line));
        renderer.setSeriesShape(0, new Ellipse2D.Double(-POINT / 2, -POINT / 2, POINT, POINT));
        return renderer;
    }

    private XYLineAndShapeRenderer marks(int line, Shape shape, Paint fill) {
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(false, true);
        renderer.setSeriesShape(0, shape);
        renderer.setUseFillPaint(true);
        renderer.setSeriesFillPaint(0, fill);
        renderer.setUseOutlinePaint(true);
        renderer.setSeriesOutlinePaint(0, theme.plan(line));
        renderer.setSeriesOutlineStroke(0, THIN);
        return renderer;
    }

    private static Shape ring() {
        return new Ellipse2D.Double(-RING / 2, -RING / 2, RING, RING);
    }

    private static Shape diamond() {
        return ShapeUtils.createDiamond(DIAMOND);
    }

    private NumberAxis portAxis() {
        NumberAxis axis = new NumberAxis("Number of ports");
        ChartFrame.style(axis, theme);
        axis.setStandardTickUnits(NumberAxis.createIntegerTickUnits());
        axis.setNumberFormatOverride(Figures.pattern("0"));
        IntStream shown = curves.stream().flatMap(c -> Stream.concat(c.byNumber().stream(), c.bought().stream()))
                .mapToInt(c -> c.mix().ports());
        axis.setRange(HALF_A_PORT, HALF_A_PORT + shown.max().orElseThrow());
        return axis;
    }

    private NumberAxis moneyAxis() {
        double largest = curves.stream().flatMap(c -> c.byNumber().stream()).mapToDouble(PortChoice::cost).max().orElseThrow();
        NumberAxis axis = ChartFrame.valueAxis(currency + "/yr", MoneyTickFormat.reaching(largest), theme);
        // Policies lie close together; from zero on, their lines could not be told apart.
        axis.setAutoRangeIncludesZero(false);
        axis.setLowerMargin(ROOM_FOR_RINGS);
        return axis;
    }

    private LegendItemCollection legend() {
        LegendItemCollection items = new LegendItemCollection();
        for (int line = 0; line < curves.size(); line++) {
            items.add(ChartFrame.line(curves.get(line).policy().label(), theme.planStroke(line), theme.plan(line)));
        }
        items.add(new LegendItem("cheapest", null, null, null, ring(), theme.background(), THIN, theme.text()));
        if (curves.stream().anyMatch(c -> c.bought().isPresent())) {
            items.add(new LegendItem("bought", null, null, null, diamond(), theme.text(), THIN, theme.text()));
        }
        return items;
    }
}
