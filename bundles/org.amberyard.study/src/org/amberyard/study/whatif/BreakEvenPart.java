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
import org.amberyard.core.math.RoundingDust;
import org.amberyard.core.money.BreakEven;
import org.amberyard.core.money.BreakEvenSearch;
import org.amberyard.core.progress.Progress;

/**
 * Finds where plans cost as much as the baseline along inputs. What is found is kept in columns: plan, number of the search, and
 * for each stretch its ends, which plan is cheaper, whether the difference jumps at its end, and what it is there.
 */
final class BreakEvenPart {
    static final int COLUMNS = 7;
    private static final int STEPS_BY_PRICES = 16;
    /** Where each variant takes long. */
    private static final int STEPS_WHOLE = 6;
    /** A difference of half a cent is none. */
    private static final double TOLERANCE = 0.005;

    private final StudyWhatIf whatIf;
    private final List<Along> searches;

    /**
     * A search along an input.
     *
     * @param input place of the input
     * @param others values of all inputs; not a number for those that stay as they are
     */
    record Along(int input, double... others) {
        double[] at(double value) {
            double[] values = others.clone();
            values[input] = value;
            return values;
        }
    }

    BreakEvenPart(StudyWhatIf whatIf, List<Along> searches) {
        this.whatIf = whatIf;
        this.searches = searches;
    }

    /**
     * Works the searches out, several at a time.
     *
     * @throws CancellationException when the progress ends it
     */
    double[][] columns(Progress progress) {
        AtomicReferenceArray<List<double[]>> found = new AtomicReferenceArray<>(searches.size());
        if (!whatIf.outcomes().search(searches.size(), (i, variants) -> found.set(i, rows(i, variants)), whatIf.threads(), progress)) {
            throw new CancellationException();
        }
        List<double[]> rows = IntStream.range(0, searches.size()).mapToObj(found::get).flatMap(List::stream).toList();
        return IntStream.range(0, COLUMNS).mapToObj(c -> rows.stream().mapToDouble(row -> row[c]).toArray()).toArray(double[][]::new);
    }

    /** Looked for within the spread where the study allows no wider range, and nowhere where it does not allow that. */
    private List<double[]> rows(int search, UnaryOperator<double[]> variants) {
        Along along = searches.get(search);
        for (double[] range : List.of(whatIf.uncertain().searched(along.input()), whatIf.steps(along.input(), 2))) {
            try {
                return rows(search, range, variants);
            } catch (IllegalArgumentException e) {
                continue;
            }
        }
        return List.of();
    }

    /** The rows of all plans; each variant is worked out once for all of them. */
    private List<double[]> rows(int search, double[] range, UnaryOperator<double[]> variants) {
        Map<Double, double[]> known = new HashMap<>();
        OutcomeColumns columns = whatIf.outcomes().columns();
        int baseline = columns.presentCost(whatIf.base().input().baseline());
        List<double[]> rows = new ArrayList<>();
        for (int plan = 0; plan < columns.plans(); plan++) {
            int cost = columns.presentCost(plan);
            if (cost != baseline) {
                add(plan, search, BreakEvenSearch.of(value -> {
                    double[] results = known.computeIfAbsent(value, v -> variants.apply(searches.get(search).at(v)));
                    return results[cost] - results[baseline];
                }, range[0], range[1], whatIf.byPrices() ? STEPS_BY_PRICES : STEPS_WHOLE, TOLERANCE), range[1] - range[0], rows);
            }
        }
        return rows;
    }

    private static void add(int plan, int search, BreakEven found, double length, List<double[]> rows) {
        for (BreakEven.Stretch stretch : found.stretches()) {
            rows.add(new double[] {plan, search, RoundingDust.swept(stretch.from(), length), RoundingDust.swept(stretch.to(), length),
                stretch.cheaper().ordinal(), stretch.jumps() ? 1 : 0,
                stretch.left()});
        }
    }

    /** What columns hold, by plan and search; no search for the baseline. */
    List<List<BreakEven>> of(double[][] columns) {
        return IntStream.range(0, whatIf.base().plans().size()).mapToObj(plan -> plan == whatIf.base().input().baseline()
                ? List.<BreakEven>of() : IntStream.range(0, searches.size()).mapToObj(search -> of(columns, plan, search)).toList()).toList();
    }

    private static BreakEven of(double[][] columns, int plan, int search) {
        return new BreakEven(IntStream.range(0, columns[0].length).filter(row -> columns[0][row] == plan && columns[1][row] == search)
                .mapToObj(row -> stretch(Arrays.stream(columns).mapToDouble(column -> column[row]).toArray())).toList());
    }

    private static BreakEven.Stretch stretch(double... row) {
        return new BreakEven.Stretch(row[2], row[3], BreakEven.Cheaper.values()[(int) row[4]], row[5] == 1, row[6]);
    }
}
