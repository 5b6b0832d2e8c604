package org.amberyard.report;

import static org.amberyard.report.WhatIfColumns.count;
import static org.amberyard.report.WhatIfColumns.plan;
import static org.amberyard.report.WhatIfColumns.share;
import static org.amberyard.report.WhatIfColumns.text;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.variants.AllTogether;
import org.amberyard.core.variants.FitCheck;
import org.amberyard.core.variants.WhatIfResults;
import org.amberyard.core.whatif.Band;
import org.amberyard.core.whatif.Miss;
import org.amberyard.report.ResultColumn.Type;

/** Table of how far fitted surfaces miss costs and savings, and whether draws are read off them. */
final class FitTable {
    /** What columns of errors in other tables hold. */
    static final String MISSED = "What 95 draws of a hundred that are read off a fitted surface miss by at most, found on evaluations kept "
            + "out of the fit and said with a confidence of 95 %; 0 where none is";
    private static final double LOW_SHARE = 0.1;
    private static final double HIGH_SHARE = 0.9;

    private final StudyResult base;
    private final FitCheck check;
    private final Optional<AllTogether> all;

    private FitTable(StudyResult base, FitCheck check, Optional<AllTogether> all) {
        this.base = base;
        this.check = check;
        this.all = all.filter(a -> check.goodEnough());
    }

    /** The table; empty where the study asks for no fit, or it is not made yet. */
    static Optional<ResultTable> of(WhatIfResults results) {
        return results.fit().map(check -> new FitTable(results.base(), check, results.all()).table());
    }

    private ResultTable table() {
        List<List<Object>> rows = new ArrayList<>();
        for (int p = 0; p < base.plans().size(); p++) {
            int plan = p;
            rows.add(row(plan, "Present cost", check.errors().presentCosts().get(plan), s -> percentile(a -> a.percentile(plan, s))));
            if (plan != base.input().baseline()) {
                rows.add(row(plan, "Saving", check.errors().savings().get(plan), s -> percentile(a -> a.savingPercentile(plan, s))));
            }
        }
        return new ResultTable("what_if_fit", "How far fitted surfaces miss", columns(), rows);
    }

    private Optional<Band> percentile(Function<AllTogether, Band> of) {
        return all.map(of);
    }

    private List<Object> row(int plan, String figure, Miss miss, DoubleFunction<Optional<Band>> percentile) {
        List<Object> row = new ArrayList<>(List.of(base.plans().get(plan).name(), figure, check.goodEnough() ? "yes" : "no", check.fittedTo(),
                check.errors().heldOut(), miss.within(), miss.largest(), miss.mean() - miss.meanReach(), miss.mean() + miss.meanReach()));
        for (double share : new double[] {LOW_SHARE, HIGH_SHARE}) {
            Optional<Band> band = percentile.apply(share);
            row.addAll(Arrays.asList(band.map(Band::low).orElse(null), band.map(Band::high).orElse(null)));
        }
        row.addAll(List.of(100 * check.worst(), 100 * check.allowed()));
        return row;
    }

    private List<ResultColumn> columns() {
        String lies = " lies if each draw were evaluated: draws of the twentieth that the bound does not speak for may be anywhere, the others are "
                + "moved by it at most; empty where each is evaluated.";
        return List.of(plan(), text("figure", "Figure", "What is read off a surface; the saving is the present cost of the baseline less that of the plan."),
                text("read_off", "Read off", "Yes where draws are read off the surface; no where it is not good enough and each draw is evaluated."),
                count("fitted_to", "Fitted to", "Evaluations that the surface was fitted to."),
                count("held_out", "Kept out", "Evaluations that were drawn independently and kept out of the fit, to check it."),
                amount("within", "95 of 100 within", "What 95 draws of a hundred are missed by at most, said with a confidence of 95 % "
                        + "whatever the distribution (order statistics, Wilks)."),
                amount("largest", "Largest", "The largest miss of the evaluations that were kept out."),
                amount("mean_low", "Mean missed, from", "Evaluation less surface on average: lower end of its 95 % interval (Student). Misses "
                        + "rarer than one in as many draws as were kept out can escape it."),
                amount("mean_high", "Mean missed, to", "Upper end."),
                amount("p10_low", "P10 from", "Where the value that one draw in ten stays below" + lies), amount("p10_high", "P10 to", "Upper end."),
                amount("p90_low", "P90 from", "Where the value that one draw in ten exceeds" + lies), amount("p90_high", "P90 to", "Upper end."),
                share("worst", "Worst", "Of all rows, the largest bound as a share of the range from P10 to P90 of its figure."),
                share("allowed", "Allowed", "What it may be before each draw is evaluated; 0 for anything."));
    }

    private ResultColumn amount(String name, String label, String meaning) {
        return new ResultColumn(name, label, base.input().currency(), Type.MONEY, meaning);
    }
}
