package org.amberyard.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.stream.IntStream;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.CategoryTick;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.category.BarRenderer;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.data.category.DefaultCategoryDataset;
import org.junit.jupiter.api.Test;

/** Fifteen years on axes of several widths. */
class YearLabelsTest {
    private static final int YEARS = 15;
    private static final Graphics2D GRAPHICS = new BufferedImage(10, 10, BufferedImage.TYPE_INT_ARGB).createGraphics();

    private static List<String> years(double width) {
        CategoryAxis axis = YearAxis.of(ChartTheme.light());
        DefaultCategoryDataset bars = new DefaultCategoryDataset();
        IntStream.range(0, YEARS).forEach(y -> bars.addValue(1, "cost", Integer.valueOf(2026 + y)));
        axis.setPlot(new CategoryPlot(bars, axis, new NumberAxis(), new BarRenderer()));
        List<?> ticks = axis.refreshTicks(GRAPHICS, new AxisState(), new Rectangle2D.Double(0, 0, width, 100), RectangleEdge.BOTTOM);
        assertEquals(YEARS, ticks.size(), "bars keep their places");
        return ticks.stream().map(CategoryTick.class::cast).filter(t -> !t.getLabel().getLines().isEmpty())
                .map(t -> t.getLabel().getLastLine().getLastTextFragment().getText()).toList();
    }

    private static List<String> starts(double width) {
        NumberAxis axis = new YearTimeAxis("Start of year");
        axis.setNumberFormatOverride(Figures.pattern("0"));
        axis.setTickUnit(new NumberTickUnit(1));
        axis.setRange(2026, 2026 + YEARS);
        new XYPlot(null, axis, null, null);
        return axis.refreshTicks(GRAPHICS, new AxisState(), new Rectangle2D.Double(0, 0, width, 100), RectangleEdge.BOTTOM).stream()
                .map(t -> ((NumberTick) t).getText()).toList();
    }

    @Test
    void allYearsAreNamedWhereThereIsRoom() {
        assertEquals(IntStream.range(2026, 2026 + YEARS).mapToObj(String::valueOf).toList(), years(900));
        assertEquals(YEARS + 1, starts(900).size());
    }

    @Test
    void elseSomeAreNamedWholeFromTheFirst() {
        for (List<String> some : List.of(years(260), starts(260))) {
            assertTrue(some.size() > 3 && some.size() < YEARS - 5, some.toString());
            assertEquals("2026", some.get(0));
            assertTrue(some.stream().allMatch(y -> y.matches("20[2-4]\\d")), some.toString());
        }
    }
}
