package org.amberyard.report;

import org.amberyard.charts.Figures;
import org.amberyard.charts.PaybackWords;
import org.amberyard.core.air.Pollutant;
import org.amberyard.core.money.Payback;
import org.amberyard.core.plan.Comparison;
import org.amberyard.core.plan.PlaceholderUse;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;

/** Says what a plan costs against the baseline. */
final class CostSentence {
    /** Below half a unit of money or half a tonne a difference is none. */
    private static final double SAME = 0.5;
    private static final double KG_PER_TONNE = 1000;

    private final StudyResult result;
    private final StudyInput study;

    CostSentence(StudyResult result) {
        this.result = result;
        this.study = result.input();
    }

    /** A baseline without another plan. */
    String alone() {
        return "“" + result.baseline().name() + "” costs " + money(result.baseline().measures().presentCost())
                + overYears() + "; there is no other plan to compare it with.";
    }

    String compared(Comparison comparison) {
        return "“" + result.plans().get(comparison.plan()).name() + "” " + cost(comparison.presentSaving()) + overYears()
                + financed(comparison) + ", " + payback(comparison) + ", and "
                + air(comparison.co2eSavingKg() / KG_PER_TONNE) + "."
                + (PlaceholderUse.in(result, Pollutant.CO2E) ? " " + PlaceholderUse.WORDS : "");
    }

    private String cost(double saving) {
        String baseline = "“" + result.baseline().name() + "”";
        if (Math.abs(saving) < SAME) {
            return "costs the same as " + baseline;
        }
        return "costs " + money(Math.abs(saving)) + (saving > 0 ? " less than " : " more than ") + baseline;
    }

    /** Both views, where financing or taxes change the answer. */
    private String financed(Comparison comparison) {
        double added = result.baseline().finance().ledger().presentValue()
                - result.plans().get(comparison.plan()).finance().ledger().presentValue();
        if (Math.abs(added) < SAME) {
            return "";
        }
        double after = comparison.presentSaving() + added;
        String words = Math.abs(after) < SAME ? "the same" : money(Math.abs(after)) + (after > 0 ? " less" : " more");
        return ", " + words + " after financing and taxes";
    }

    private String overYears() {
        return " over " + (study.years() == 1 ? "1 year" : study.years() + " years") + " (present value)";
    }

    /** The payback counts no interest and nothing left at the end; where that turns the answer round, say so. */
    private String payback(Comparison comparison) {
        String words = PaybackWords.of(comparison.simple(), study);
        boolean paysBack = comparison.simple().outcome() != Payback.Outcome.NEVER;
        if (paysBack && comparison.presentSaving() <= -SAME) {
            return words + " only when neither interest nor what is left at the end counts";
        }
        return !paysBack && comparison.presentSaving() >= SAME ? words + " unless what is left at the end counts" : words;
    }

    private static String air(double savedTonnes) {
        if (Double.isNaN(savedTonnes)) {
            return "what it emits is not known";
        }
        if (Math.abs(savedTonnes) < SAME) {
            return "emits as much CO2e";
        }
        return savedTonnes > 0 ? "saves " + Figures.whole(savedTonnes) + " t CO2e"
                : "emits " + Figures.whole(-savedTonnes) + " t CO2e more";
    }

    private String money(double amount) {
        return Figures.money(study.currency(), amount);
    }
}
