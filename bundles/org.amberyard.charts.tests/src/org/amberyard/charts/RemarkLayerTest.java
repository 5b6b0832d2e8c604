package org.amberyard.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.DefaultXYDataset;
import org.junit.jupiter.api.Test;

/** A line that rises from the lower left to the upper right: boxes beside it would lie on it, there is room below and above. */
class RemarkLayerTest {
    private static final Color LINE = Color.RED;

    private static int redPixels(Optional<String> note) {
        DefaultXYDataset data = new DefaultXYDataset();
        data.addSeries("a", new double[][] {{0, 1}, {0, 1}});
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        renderer.setSeriesPaint(0, LINE);
        renderer.setSeriesStroke(0, new BasicStroke(2));
        XYPlot plot = new XYPlot(data, new NumberAxis("x"), new NumberAxis("y"), renderer);
        note.ifPresent(text -> plot.addAnnotation(new RemarkLayer(
                List.of(new RemarkLayer.Placed(text, Optional.of(new Point2D.Double(0.3, 0.3)))),
                new RemarkLayer.Look(Color.WHITE, Color.BLACK, new Font(Font.SANS_SERIF, Font.PLAIN, 11)))));
        BufferedImage image = new BufferedImage(600, 400, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        new JFreeChart(plot).draw(graphics, new Rectangle2D.Double(0, 0, 600, 400));
        graphics.dispose();
        return (int) Arrays.stream(image.getRGB(0, 0, 600, 400, null, 0, 600)).filter(p -> p == LINE.getRGB()).count();
    }

    @Test
    void aBoxCoversNoDataWhereThereIsFreeRoom() {
        int bare = redPixels(Optional.empty());
        int noted = redPixels(Optional.of("A note of some length that needs a box of several lines beside the place of which it speaks"));
        assertTrue(bare > 300, bare + " pixels of the line");
        assertEquals(bare, noted, 40, "the pointer and its ring lie on the line, the box does not");
    }
}
