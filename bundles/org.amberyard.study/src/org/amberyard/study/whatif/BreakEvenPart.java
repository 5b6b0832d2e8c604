package org.amberyard.study.whatif;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.amberyard.core.money.BreakEven;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.variants.BreakEvenLine;
import org.amberyard.core.variants.FitErrors;
import org.amberyard.core.whatif.BreakEvenCurve;

/**
 * Finds where plans cost as much as the baseline along one input, for values of another; where surfaces stand in, only between the
 * low and the high value of the input, where they were fitted. Points are kept in columns: plan, value of
 * the other input, and for each stretch its ends, which plan is cheaper, and whether the difference jumps at its end.
 */
final class BreakEvenPart {
    private static final int POINTS = 9;
    private static final int SCAN_STEPS = 16;
    static final int COLUMNS = 6;
    /** A difference of half a cent is none. */
    private static final double TOLERANCE = 0.005;

    private final StudyWhatIf whatIf;
    private final int first;
    private final int second;
    private final double[] searched;

    BreakEvenPart(StudyWhatIf whatIf, int[] widest) {
        this.whatIf = whatIf;
        this.first = widest[0];
        this.second = widest[1];
        this.searched = FittedDraws.wanted(whatIf) ? whatIf.steps(first, 2) : whatIf.uncertain().searched(first);
    }

    /**
     * Works the points out, several at a time.
     *
     * @throws CancellationException when the progress ends it
     */
    double[][] columns(Progress progress) {
        double[] others = whatIf.steps(second, POINTS);
        AtomicReferenceArray<List<double[]>> points = new AtomicReferenceArray<>(others.length);
        if (!whatIf.outcomes().search(others.length, (i, variants) -> points.set(i, point(others[i], variants)), whatIf.threads(), progress)) {
            throw new CancellationException();
        }
        List<double[]> rows = IntStream.range(0, others.length).mapToObj(points::get).flatMap(List::stream).toList();
        return IntStream.range(0, COLUMNS).mapToObj(c -> rows.stream().mapToDouble(row -> row[c]).toArray()).toArray(double[][]::new);
    }

    /** The rows of all plans at a value of the other input; each variant is worked out once for all of them. */
    private List<double[]> point(double other, UnaryOperator<double[]> variants) {
        Map<Double, double[]> known = new HashMap<>();
        BreakEvenCurve.Range range = new BreakEvenCurve.Range(searched[0], searched[1], SCAN_STEPS, TOLERANCE);
        OutcomeColumns columns = whatIf.outcomes().columns();
        int baseline = columns.presentCost(whatIf.base().input().baseline());
        List<double[]> rows = new ArrayList<>();
        for (int plan = 0; plan < whatIf.base().plans().size(); plan++) {
            int cost = columns.presentCost(plan);
            if (cost != baseline) {
                add(plan, BreakEvenCurve.of((value, at) -> {
                    double[] results = known.computeIfAbsent(value, v -> variants.apply(whatIf.uncertain().alone(first, v, second, at)));
                    return results[cost] - results[baseline];
                }, range, other).get(0), rows);
            }
        }
        return rows;
    }

    private static void add(int plan, BreakEvenCurve point, List<double[]> rows) {
        for (BreakEven.Stretch stretch : point.at().stretches()) {
            rows.add(new double[] {plan, point.other(), stretch.from(), stretch.to(), stretch.cheaper().ordinal(), stretch.jumps() ? 1 : 0});
        }
    }

    /** The line that columns hold, found on results that are missed by so much. */
    BreakEvenLine of(double[][] columns, FitErrors missed) {
        List<List<BreakEvenCurve>> plans = new ArrayList<>();
        for (int plan = 0; plan < whatIf.base().plans().size(); plan++) {
            int of = plan;
            int[] rows = IntStream.range(0, columns[0].length).filter(row -> columns[0][row] == of).toArray();
            plans.add(Arrays.stream(rows).mapToDouble(row -> columns[1][row]).distinct()
                    .mapToObj(other -> new BreakEvenCurve(other, new BreakEven(Arrays.stream(rows)
                            .filter(row -> columns[1][row] == other).mapToObj(row -> stretch(columns, row)).toList()))).toList());
        }
        return new BreakEvenLine(first, second, searched[0], searched[1], plans, missed);
    }

    private static BreakEven.Stretch stretch(double[][] columns, int row) {
        return new BreakEven.Stretch(columns[2][row], columns[3][row], BreakEven.Cheaper.values()[(int) columns[4][row]],
                columns[5][row] == 1);
    }
}
