package org.amberyard.charts;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.amberyard.core.money.BreakEven.Cheaper;
import org.amberyard.core.money.BreakEven.Stretch;
import org.amberyard.core.whatif.BreakEvenCurve;

/**
 * Joins the changes of the cheaper plan at neighbouring values of the other input to branches. Only changes in the same direction
 * belong together, and only where both neighbours have as many of them: where a branch comes up or ends, no line tells which.
 */
final class BreakEvenBranches {
    private final List<Branch> all = new ArrayList<>();

    /**
     * How the cheaper plan changes as the searched input rises.
     *
     * @param below what costs less below the change
     * @param above what costs less above it
     */
    record Direction(Cheaper below, Cheaper above) {
    }

    /**
     * A change.
     *
     * @param other value of the other input
     * @param value value of the searched input
     * @param jumps true where the difference jumps over zero, so that the plans cost the same nowhere near
     */
    record Change(double other, double value, boolean jumps) {
    }

    /**
     * Changes that are joined.
     *
     * @param direction direction of all of them
     * @param changes by rising value of the other input
     */
    record Branch(Direction direction, List<Change> changes) {
    }

    private BreakEvenBranches() {
    }

    /** The branches of points that stand in the order of the other input, in the order in which they come up. */
    static List<Branch> of(List<BreakEvenCurve> points) {
        BreakEvenBranches branches = new BreakEvenBranches();
        Map<Direction, List<Branch>> before = Map.of();
        for (BreakEvenCurve point : points) {
            before = branches.joined(changes(point), before);
        }
        return branches.all;
    }

    private Map<Direction, List<Branch>> joined(Map<Direction, List<Change>> changes, Map<Direction, List<Branch>> before) {
        Map<Direction, List<Branch>> now = new LinkedHashMap<>();
        changes.forEach((direction, of) -> {
            List<Branch> open = before.getOrDefault(direction, List.of());
            List<Branch> on = open.size() == of.size() ? open : of.stream().map(c -> begun(direction)).toList();
            for (int i = 0; i < of.size(); i++) {
                on.get(i).changes().add(of.get(i));
            }
            now.put(direction, on);
        });
        return now;
    }

    private Branch begun(Direction direction) {
        Branch branch = new Branch(direction, new ArrayList<>());
        all.add(branch);
        return branch;
    }

    private static Map<Direction, List<Change>> changes(BreakEvenCurve point) {
        Map<Direction, List<Change>> changes = new LinkedHashMap<>();
        List<Stretch> stretches = point.at().stretches();
        for (int i = 1; i < stretches.size(); i++) {
            Stretch below = stretches.get(i - 1);
            changes.computeIfAbsent(new Direction(below.cheaper(), stretches.get(i).cheaper()), d -> new ArrayList<>())
                    .add(new Change(point.other(), stretches.get(i).from(), below.jumps()));
        }
        return changes;
    }
}
