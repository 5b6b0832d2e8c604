package org.amberyard.report;

import java.text.NumberFormat;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.whatif.Band;
import org.amberyard.core.whatif.Miss;
import org.amberyard.core.whatif.SobolIndices;
import org.amberyard.core.whatif.SortedDraws;
import org.amberyard.core.variants.AllTogether;
import org.amberyard.core.variants.FitCheck;
import org.amberyard.core.variants.VarianceShares;
import org.amberyard.core.variants.WhatIfResults;

/** What a what-if says, in sentences. */
public final class WhatIfWords {
    private static final double CONFIDENCE = 0.95;

    private final StudyResult base;
    private final long seed;

    private WhatIfWords(WhatIfResults results) {
        this.base = results.base();
        this.seed = results.inputs().seed();
    }

    /** How likely each plan is to cost less than the baseline, and what decides it, as far as it is known. */
    public static List<String> of(WhatIfResults results) {
        return WhyTables.others(results.base()).stream().map(p -> of(results, p.index()).orElse("")).toList();
    }

    /** The same of one plan; empty for the baseline and where nothing is known. */
    public static Optional<String> of(WhatIfResults results, int plan) {
        if (plan == results.base().input().baseline()) {
            return Optional.empty();
        }
        WhatIfWords words = new WhatIfWords(results);
        return Optional.of((results.all().map(all -> words.chance(plan, all)).orElse("")
                + results.fit().map(words::notFitted).orElse("")
                + results.shares().map(shares -> " " + words.deciding(plan, shares)).orElse("")).strip()).filter(w -> !w.isEmpty());
    }

    private String chance(int plan, AllTogether draws) {
        Band cheaper = draws.plans().cheaper(plan, base.input().baseline()).band(CONFIDENCE);
        SortedDraws dearer = SortedDraws.of(draws.plans().difference(plan, base.input().baseline()));
        return String.format(Locale.ENGLISH, "“%s” costs less than “%s” in %s of %d draws, seed %d (likely %s to %s). %s", base.plans().get(plan).name(),
                base.baseline().name(), percent(cheaper.value()),
                draws.end().draws(), seed, percent(cheaper.low()), percent(cheaper.high()), between(dearer.quantile(0.1), dearer.quantile(0.9)))
                + fitted(plan, draws);
    }

    private String fitted(int plan, AllTogether draws) {
        Miss missed = draws.missed().savings().get(plan);
        return missed.equals(Miss.NONE) ? "" : " Draws are read off a fitted surface: 95 of a hundred miss this difference by "
                + money(missed.within()) + " at most, the largest of " + draws.missed().heldOut() + " that were evaluated to check by "
                + money(missed.largest()) + ".";
    }

    private String notFitted(FitCheck check) {
        return check.goodEnough() ? "" : " Every draw is evaluated: 95 of a hundred read off a fitted surface would miss a cost or a saving by up to "
                + percent(check.worst()) + " of its range from P10 to P90, more than the " + percent(check.allowed()) + " that are allowed.";
    }

    private String between(double low, double high) {
        String often = "In eight draws out of ten it costs ";
        if (low >= 0) {
            return often + money(low) + " to " + money(high) + " more.";
        }
        return high <= 0 ? often + money(-high) + " to " + money(-low) + " less."
                : often + "from " + money(-low) + " less to " + money(high) + " more.";
    }

    private String deciding(int plan, VarianceShares shares) {
        SobolIndices of = shares.ofSaving(plan);
        List<String> named = VarianceShares.deciding(of).stream()
                .map(g -> shares.groups().get(g) + " (" + about(of.first().get(g)) + ")").toList();
        return named.isEmpty() ? "No single input explains a twentieth of the variance of its saving."
                : shares.explained(of) + " of its saving. What it comes to is decided by " + String.join(", ", named)
                        + ": shares that each explains by itself.";
    }

    private static String about(Band share) {
        return "about " + percent(share.value()) + ", likely " + percent(share.low()) + " to " + percent(share.high());
    }

    private static String percent(double share) {
        return String.format(Locale.ENGLISH, "%.0f %%", 100 * Math.min(1, Math.max(0, share)));
    }

    private String money(double amount) {
        return base.input().currency() + " " + NumberFormat.getIntegerInstance(Locale.ENGLISH).format(Math.round(amount));
    }
}
