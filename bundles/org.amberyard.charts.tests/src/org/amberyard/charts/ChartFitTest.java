package org.amberyard.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.DefaultXYDataset;
import org.junit.jupiter.api.Test;

class ChartFitTest {
    private static final String TITLE = "Appropriations added up (USD, money of the years)";
    private static final String SAID = "A sentence that says at length what is to be seen. ".repeat(6);

    private final ChartTheme theme = ChartTheme.light();

    private XYPlot plot(String title) {
        DefaultXYDataset data = new DefaultXYDataset();
        data.addSeries("a", new double[][] {{0, 1, 2}, {0, 10, 5}});
        return new XYPlot(data, new NumberAxis("Year"), ChartFrame.valueAxis(title, Figures.pattern("0"), theme),
                new XYLineAndShapeRenderer());
    }

    private static Rectangle2D area(JFreeChart chart, double width, double height) {
        ChartRenderingInfo info = new ChartRenderingInfo();
        Graphics2D graphics = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();
        chart.draw(graphics, new Rectangle2D.Double(0, 0, width, height), info);
        graphics.dispose();
        return info.getPlotInfo().getDataArea();
    }

    @Test
    void aPlotThatIsTooLowGetsItsHeight() {
        JFreeChart chart = ChartFrame.around(plot("Cost"), "A title", SAID, theme);
        assertTrue(area(chart, 500, 160).getHeight() < 70);
        try (ChartFit fit = ChartFit.of(chart, 500, 160)) {
            assertTrue(fit.height() > 160);
            assertTrue(area(chart, 500, fit.height()).getHeight() >= 79);
        }
        try (ChartFit fit = ChartFit.of(chart, 500, 600)) {
            assertEquals(600, fit.height(), "what is high enough stays");
        }
    }

    @Test
    void titlesAreNoLongerThanTheirAxesAndWholeAgainAfterwards() {
        XYPlot plot = plot(TITLE);
        JFreeChart chart = ChartFrame.around(plot, "A title", SAID, theme);
        List<String> titles = new ArrayList<>();
        for (int height = 160; height < 700; height += 20) {
            try (ChartFit fit = ChartFit.of(chart, 500, height)) {
                titles.add(plot.getRangeAxis().getLabel());
            }
            assertEquals(TITLE, plot.getRangeAxis().getLabel());
        }
        assertEquals(List.of("USD", "Appropriations added up (USD)", TITLE), titles.stream().distinct().toList());
    }

    @Test
    void aTitleWithoutUnitIsCutNotLost() {
        XYPlot plot = plot("Diesel price rise");
        try (ChartFit fit = ChartFit.of(ChartFrame.around(plot, "A title", SAID, theme), 500, 160)) {
            String cut = plot.getRangeAxis().getLabel();
            assertTrue(cut.startsWith("Diesel") && cut.endsWith("…"), cut);
        }
    }

    @Test
    void eachOfSeveralPlotsIsHighEnough() {
        CombinedDomainXYPlot plots = new CombinedDomainXYPlot(new NumberAxis("Year"));
        for (int i = 0; i < 5; i++) {
            plots.add(plot("Cost"));
        }
        JFreeChart chart = ChartFrame.around(plots, "A title", "Said", theme);
        try (ChartFit fit = ChartFit.of(chart, 500, 200)) {
            assertTrue(area(chart, 500, fit.height()).getHeight() > 5 * 54, "five plots");
        }
    }
}
