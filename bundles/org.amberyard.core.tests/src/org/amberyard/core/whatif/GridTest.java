package org.amberyard.core.whatif;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleBinaryOperator;
import java.util.stream.IntStream;
import org.amberyard.core.whatif.ContourLine.Point;
import org.junit.jupiter.api.Test;

class GridTest {

    private static List<ContourLine> lines(DoubleBinaryOperator result, double low, double high, int values) {
        double[] steps = Grid.steps(low, high, values);
        Grid grid = new Grid(steps, steps);
        return ContourLine.of(grid, results(grid, result), 0);
    }

    private static double[] results(Grid grid, DoubleBinaryOperator result) {
        return IntStream.range(0, grid.evaluations()).mapToDouble(e -> result.applyAsDouble(grid.first(e), grid.second(e))).toArray();
    }

    @Test
    void evaluationsRunAlongTheFirstInput() {
        Grid grid = new Grid(new double[] {1, 2, 4}, new double[] {10, 20});
        assertEquals(6, grid.evaluations());
        assertArrayEquals(new double[] {11, 12, 14, 21, 22, 24}, results(grid, Double::sum), 0);
        assertThrows(IllegalArgumentException.class, () -> new Grid(new double[] {1, 1}, new double[] {1, 2}));
        assertThrows(IllegalArgumentException.class, () -> ContourLine.of(grid, new double[5], 0));
    }

    /** From −0.3 to 0.6 in steps of 0.3: rounding leaves 5.6e-17 in place of the second. */
    @Test
    void aStepThatComesNextToZeroIsZero() {
        assertEquals(0, Grid.steps(-0.3, 0.6, 4)[1], 0);
        assertEquals(0, Grid.steps(-0.1, 0.2, 4)[1], 0);
    }

    /** A plane is zero on a straight line, which marching squares give exactly. */
    @Test
    void lineOfAPlane() {
        List<ContourLine> lines = lines((x, y) -> 2 * x + y - 7, 0, 5, 6);
        assertEquals(1, lines.size());
        assertFalse(lines.get(0).closed());
        lines.get(0).points().forEach(p -> assertEquals(7, 2 * p.first() + p.second(), 1e-12));
        assertEquals(List.of(1.0, 3.5), List.of(lines.get(0).points().get(0), lines.get(0).points().get(
                lines.get(0).points().size() - 1)).stream().map(Point::first).sorted().toList());
    }

    /** A circle comes back closed, every point off by less than the sagitta of a step. */
    @Test
    void circleIsClosed() {
        List<ContourLine> lines = lines((x, y) -> x * x + y * y - 4, -3, 3, 61);
        assertEquals(1, lines.size());
        assertTrue(lines.get(0).closed());
        double length = 0;
        List<Point> points = lines.get(0).points();
        for (int i = 0; i < points.size(); i++) {
            Point next = points.get((i + 1) % points.size());
            assertEquals(2, Math.hypot(points.get(i).first(), points.get(i).second()), 0.002);
            length += Math.hypot(next.first() - points.get(i).first(), next.second() - points.get(i).second());
        }
        assertEquals(4 * Math.PI, length, 0.02);
    }

    /** xy = 0.1 on one cell around a saddle: the surface lies over the level in two corners that are not joined. */
    @Test
    void saddleIsCutAsItsSurfaceIs() {
        List<ContourLine> apart = lines((x, y) -> x * y - 0.1, -1, 1, 2);
        assertEquals(2, apart.size());
        apart.forEach(line -> assertTrue(line.points().get(0).first() * line.points().get(1).first() > 0));
        List<ContourLine> joined = lines((x, y) -> x * y + 0.1, -1, 1, 2);
        joined.forEach(line -> assertTrue(line.points().get(0).second() * line.points().get(1).first() < 0
                || line.points().get(0).first() * line.points().get(1).second() < 0));
        assertEquals(2, joined.size());
    }

    @Test
    void aLineThroughNodesHasNoPointTwice() {
        List<ContourLine> lines = lines((x, y) -> x - y, 0, 3, 4);
        assertEquals(1, lines.size());
        assertEquals(4, lines.get(0).points().size());
    }

    @Test
    void cellsWithoutAResultAreLeftOut() {
        assertEquals(2, lines((x, y) -> x == 2 && y == 2 ? Double.NaN : x + y - 3.9, 0, 4, 5).size());
        assertEquals(List.of(), lines((x, y) -> 1, 0, 4, 5));
    }
}
