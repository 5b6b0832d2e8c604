package org.amberyard.study.whatif;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
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
    private static final int COLUMNS = 6;
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

    /** Works the points out; told of each. */
    double[][] columns(Progress progress) {
        double[] others = whatIf.steps(second, POINTS);
        int baseline = whatIf.base().input().baseline();
        List<double[]> rows = new ArrayList<>();
        BreakEvenCurve.Range range = new BreakEvenCurve.Range(searched[0], searched[1], SCAN_STEPS, TOLERANCE);
        int plans = whatIf.base().plans().size();
        for (int i = 0; i < others.length; i++) {
            for (int plan = 0; plan < plans; plan++) {
                progress.at((double) (i * plans + plan) / (others.length * plans));
                if (plan != baseline) {
                    add(plan, curve(plan, baseline, range, others[i]), rows);
                }
            }
        }
        return IntStream.range(0, COLUMNS).mapToObj(c -> rows.stream().mapToDouble(row -> row[c]).toArray()).toArray(double[][]::new);
    }

    private BreakEvenCurve curve(int plan, int baseline, BreakEvenCurve.Range range, double other) {
        VariantOutcomes outcomes = whatIf.outcomes();
        return BreakEvenCurve.of((value, at) -> {
            double[] results = outcomes.one(whatIf.uncertain().alone(first, value, second, at));
            return results[outcomes.columns().presentCost(plan)] - results[outcomes.columns().presentCost(baseline)];
        }, range, other).get(0);
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
