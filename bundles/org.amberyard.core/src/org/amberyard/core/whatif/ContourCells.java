package org.amberyard.core.whatif;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.core.whatif.ContourLine.Point;

/**
 * Where a level crosses the cells of a grid, by marching squares (Lorensen and Cline, "Marching cubes", Computer
 * Graphics 21 (1987), 163–169, in two dimensions; from memory): straight within a cell, crossings of its sides
 * interpolated in a straight line. A cell with four crossings is cut as its bilinear surface is, by the value at the
 * saddle (Nielson and Hamann, "The asymptotic decider", IEEE Visualization 1991, from memory).
 *
 * <p>Sides are numbered: 2 e is the side from node e along the first input, 2 e + 1 that from node e along the second.
 */
final class ContourCells {
    private final Grid grid;
    private final double[] results;
    private final double level;

    /** A piece of the line within a cell, from one side to another. */
    record Piece(int from, int to) {
    }

    ContourCells(Grid grid, double[] results, double level) {
        this.grid = grid;
        this.results = results;
        this.level = level;
    }

    /** All pieces, cell by cell. */
    List<Piece> pieces() {
        List<Piece> pieces = new ArrayList<>();
        for (int row = 0; row + 1 < grid.rows(); row++) {
            for (int column = 0; column + 1 < grid.columns(); column++) {
                add(pieces, row * grid.columns() + column);
            }
        }
        return pieces;
    }

    private void add(List<Piece> pieces, int node) {
        int above = node + grid.columns();
        double sum = results[node] + results[node + 1] + results[above] + results[above + 1];
        if (Double.isNaN(sum)) {
            return;
        }
        int bottom = 2 * node;
        int left = 2 * node + 1;
        int right = 2 * (node + 1) + 1;
        int top = 2 * above;
        List<Integer> crossed = new ArrayList<>();
        for (int side : new int[] {bottom, right, top, left}) {
            if (isOver(start(side)) != isOver(end(side))) {
                crossed.add(side);
            }
        }
        if (crossed.size() == 2) {
            pieces.add(new Piece(crossed.get(0), crossed.get(1)));
        } else if (crossed.size() == 4) {
            boolean joined = isSaddleOver(node) == isOver(node);
            pieces.add(new Piece(bottom, joined ? right : left));
            pieces.add(new Piece(top, joined ? left : right));
        }
    }

    private boolean isSaddleOver(int node) {
        double a = results[node] - level;
        double b = results[node + 1] - level;
        double c = results[node + grid.columns() + 1] - level;
        double d = results[node + grid.columns()] - level;
        return (a * c - b * d) / (a + c - b - d) >= 0;
    }

    private boolean isOver(int node) {
        return results[node] >= level;
    }

    private static int start(int side) {
        return side / 2;
    }

    private int end(int side) {
        return side % 2 == 0 ? side / 2 + 1 : side / 2 + grid.columns();
    }

    /** Where the level crosses a side. */
    Point crossing(int side) {
        int start = start(side);
        int end = end(side);
        double part = (level - results[start]) / (results[end] - results[start]);
        return new Point(grid.first(start) + part * (grid.first(end) - grid.first(start)),
                grid.second(start) + part * (grid.second(end) - grid.second(start)));
    }
}
