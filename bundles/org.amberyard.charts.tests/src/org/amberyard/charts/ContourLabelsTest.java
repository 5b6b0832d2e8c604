package org.amberyard.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.Collection;
import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.whatif.ContourLine;
import org.jfree.chart.axis.NumberAxis;
import org.junit.jupiter.api.Test;

/** Ten lines rise side by side, a tenth of the width apart. */
class ContourLabelsTest {
    private static final int LINES = 10;

    private static Collection<Rectangle2D> boxes(int width, int height) {
        ContourLabels labels = new ContourLabels(ChartTheme.light());
        for (int line = 0; line < LINES; line++) {
            double at = (line + 0.5) / LINES;
            labels.add("−1.25M", IntStream.rangeClosed(0, 20).mapToObj(step -> new ContourLine.Point(at, step / 20.0)).toList());
        }
        Graphics2D graphics = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();
        try {
            return List.copyOf(labels.boxes(graphics, new Rectangle2D.Double(0, 0, width, height), axis(), axis()).values());
        } finally {
            graphics.dispose();
        }
    }

    private static NumberAxis axis() {
        NumberAxis axis = new NumberAxis();
        axis.setRange(0, 1);
        return axis;
    }

    private static void assertApart(Collection<Rectangle2D> boxes) {
        assertTrue(boxes.stream().allMatch(box -> boxes.stream().filter(other -> other != box).noneMatch(box::intersects)), boxes.toString());
    }

    @Test
    void amountsThatHaveRoomStandInTheMiddleOfTheirLines() {
        Collection<Rectangle2D> boxes = boxes(1000, 300);
        assertEquals(LINES, boxes.size());
        assertApart(boxes);
        assertTrue(boxes.stream().allMatch(box -> Math.abs(box.getCenterY() - 150) < 1e-9), boxes.toString());
    }

    @Test
    void amountsThatWouldStandOverOthersGoAlongTheirLines() {
        Collection<Rectangle2D> boxes = boxes(300, 300);
        assertApart(boxes);
        assertTrue(boxes.stream().map(Rectangle2D::getCenterY).distinct().count() > 1, boxes.toString());
    }

    @Test
    void amountsWithoutRoomAreLeftOut() {
        Collection<Rectangle2D> boxes = boxes(200, 24);
        assertApart(boxes);
        assertTrue(boxes.size() < LINES && !boxes.isEmpty(), boxes.toString());
    }
}
