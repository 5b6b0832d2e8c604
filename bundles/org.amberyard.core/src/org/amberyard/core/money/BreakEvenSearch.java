package org.amberyard.core.money;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.amberyard.core.math.Checks;
import org.amberyard.core.money.BreakEven.Cheaper;
import org.amberyard.core.money.BreakEven.Stretch;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Finds where the cost of a plan less that of another changes its sign as an input runs over a range. The range is scanned in
 * equal steps; a dip of the difference towards zero between steps is followed to its lowest point; each change is then closed
 * in by Brent's method and put back into the difference. The difference need not be monotone and may jump; changes that lie
 * together closer than a step without a dip that can be followed may be missed.
 */
public final class BreakEvenSearch {
    private static final int MOST_EVALUATIONS = 200;
    private static final double RELATIVE = 1e-12;
    private static final double NEAR = 1e-9;
    private static final double NEXT_TO_NOTHING = 1e-6;

    private final DifferenceScan scan;
    private final double step;
    private final double tolerance;

    private BreakEvenSearch(DifferenceScan scan, double step, double tolerance) {
        this.scan = scan;
        this.step = step;
        this.tolerance = tolerance;
    }

    /**
     * Where a plan is cheaper.
     *
     * @param difference cost of the plan less that of the other, by the value of the input
     * @param low lower end of the range
     * @param high upper end of the range, above it
     * @param steps steps of the scan
     * @param tolerance a difference of this size is none
     */
    public static BreakEven of(DoubleUnaryOperator difference, double low, double high, int steps, double tolerance) {
        double step = Checks.positive("Range of the input", high - low) / Checks.positive("Steps of the scan", steps);
        DifferenceScan scan = new DifferenceScan(difference, Checks.notNegative("Tolerance", tolerance));
        scan.scan(low, high, steps);
        return new BreakEven(new BreakEvenSearch(scan, step, tolerance).stretches());
    }

    /** Neighbouring inputs of one kind. */
    private record Run(double first, double last, Cheaper cheaper) {
    }

    private List<Stretch> stretches() {
        double from = scan.known().firstKey();
        double last = scan.known().lastKey();
        List<Run> runs = runs();
        List<Stretch> found = new ArrayList<>();
        for (int i = 0; i < runs.size() - 1; i++) {
            double change = change(runs.get(i).last(), runs.get(i + 1).first());
            boolean jumps = jumps(runs.get(i).last(), change, runs.get(i + 1).first());
            found.add(new Stretch(from, change, runs.get(i).cheaper(), jumps, scan.at(change)));
            from = change;
        }
        found.add(new Stretch(from, last, runs.get(runs.size() - 1).cheaper(), false, scan.at(last)));
        return found;
    }

    /** A lone point at which the plans cost the same is where two stretches meet, or touch, and no stretch of its own. */
    private List<Run> runs() {
        List<Run> all = new ArrayList<>();
        scan.known().keySet().forEach(input -> append(all, new Run(input, input, scan.cheaper(input))));
        List<Run> wide = new ArrayList<>();
        all.stream().filter(r -> r.cheaper() != Cheaper.NEITHER || r.last() - r.first() > step / 2).forEach(r -> append(wide, r));
        return wide.isEmpty() ? List.of(new Run(scan.known().firstKey(), scan.known().lastKey(), Cheaper.NEITHER)) : wide;
    }

    private static void append(List<Run> runs, Run next) {
        int last = runs.size() - 1;
        if (last >= 0 && runs.get(last).cheaper() == next.cheaper()) {
            runs.set(last, new Run(runs.get(last).first(), next.last(), next.cheaper()));
        } else {
            runs.add(next);
        }
    }

    /** Puts a change back: very near to it the difference is next to nothing, unless it jumps there. */
    private boolean jumps(double low, double change, double high) {
        double near = (high - low) * NEAR;
        double left = Math.abs(scan.at(Math.max(low, change - near)));
        double right = Math.abs(scan.at(Math.min(high, change + near)));
        return left + right > Math.max(2 * tolerance, NEXT_TO_NOTHING * (Math.abs(scan.at(low)) + Math.abs(scan.at(high))));
    }

    private double change(double low, double high) {
        double accuracy = RELATIVE * Math.max(Math.abs(low), Math.abs(high));
        return scan.cheaper(low) != Cheaper.NEITHER && scan.cheaper(high) != Cheaper.NEITHER
                ? new BrentSolver(accuracy).solve(MOST_EVALUATIONS, scan::at, low, high) : edge(low, high, accuracy);
    }

    /** Where a stretch on which the plans cost the same starts or ends. */
    private double edge(double low, double high, double accuracy) {
        Cheaper before = scan.cheaper(low);
        double a = low;
        double b = high;
        for (double middle = (a + b) / 2; b - a > accuracy && middle > a && middle < b; middle = (a + b) / 2) {
            if (scan.cheaper(middle) == before) {
                a = middle;
            } else {
                b = middle;
            }
        }
        return before == Cheaper.NEITHER ? a : b;
    }
}
