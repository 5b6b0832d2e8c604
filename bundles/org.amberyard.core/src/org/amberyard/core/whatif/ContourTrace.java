package org.amberyard.core.whatif;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.amberyard.core.whatif.ContourLine.Point;

/** Joins the pieces of a level to lines: first those that end at the edge of the grid, then the closed ones. */
final class ContourTrace {
    private final ContourCells cells;
    private final Map<Integer, List<Integer>> neighbours = new TreeMap<>();

    ContourTrace(ContourCells cells) {
        this.cells = cells;
        for (ContourCells.Piece piece : cells.pieces()) {
            neighbours.computeIfAbsent(piece.from(), s -> new ArrayList<>()).add(piece.to());
            neighbours.computeIfAbsent(piece.to(), s -> new ArrayList<>()).add(piece.from());
        }
    }

    List<ContourLine> lines() {
        List<ContourLine> lines = new ArrayList<>();
        for (int start = next(1); start >= 0; start = next(1)) {
            lines.add(new ContourLine(points(start), false));
        }
        for (int start = next(2); start >= 0; start = next(2)) {
            lines.add(closed(points(start)));
        }
        return lines.stream().filter(line -> line.points().size() > 1).toList();
    }

    /** First side that still has a number of neighbours; −1 for none. */
    private int next(int count) {
        return neighbours.entrySet().stream().filter(e -> e.getValue().size() == count).map(Map.Entry::getKey)
                .findFirst().orElse(-1);
    }

    private static ContourLine closed(List<Point> points) {
        boolean again = points.size() > 1 && points.get(0).equals(points.get(points.size() - 1));
        return new ContourLine(again ? points.subList(0, points.size() - 1) : points, true);
    }

    /**
     * Takes the pieces of a line away as it follows them; where the line meets a node of the grid, its point is taken
     * once.
     */
    private List<Point> points(int start) {
        List<Point> points = new ArrayList<>();
        Optional<Integer> side = Optional.of(start);
        while (side.isPresent()) {
            Point point = cells.crossing(side.get());
            if (points.isEmpty() || !points.get(points.size() - 1).equals(point)) {
                points.add(point);
            }
            side = takeNext(side.get());
        }
        return points;
    }

    private Optional<Integer> takeNext(int side) {
        List<Integer> beyond = neighbours.get(side);
        if (beyond.isEmpty()) {
            return Optional.empty();
        }
        Integer next = beyond.remove(0);
        neighbours.get(next).remove((Integer) side);
        return Optional.of(next);
    }
}
