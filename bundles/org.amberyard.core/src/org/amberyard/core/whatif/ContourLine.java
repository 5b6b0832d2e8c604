package org.amberyard.core.whatif;

import java.util.List;

/**
 * A line over a grid on which a result has a value, such as that on which two plans cost the same.
 *
 * @param points points along it, two or more
 * @param closed true when the last point is followed by the first
 */
public record ContourLine(List<Point> points, boolean closed) {

    /**
     * A point of the line.
     *
     * @param first value of the first input
     * @param second value of the second input
     */
    public record Point(double first, double second) {
    }

    public ContourLine {
        points = List.copyOf(points);
    }

    /**
     * All lines of a level over a grid.
     *
     * @param results the result by evaluation of the grid; cells at a result that is not a number are left out
     * @param level value of the result on the line
     * @throws IllegalArgumentException when there is not one result for each evaluation
     */
    public static List<ContourLine> of(Grid grid, double[] results, double level) {
        if (results.length != grid.evaluations()) {
            throw new IllegalArgumentException("Number of results is " + results.length
                    + " but must be that of the evaluations, "
                    + grid.evaluations());
        }
        return new ContourTrace(new ContourCells(grid, results, level)).lines();
    }
}
