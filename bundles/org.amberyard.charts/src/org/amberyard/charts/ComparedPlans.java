package org.amberyard.charts;

import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.variants.WhatIfResults;
import org.amberyard.core.whatif.Miss;

/** A plan of a what-if and the baseline that it is compared with, in words. */
record ComparedPlans(WhatIfResults results, int plan) {

    StudyResult base() {
        return results.base();
    }

    int baseline() {
        return base().input().baseline();
    }

    String name() {
        return base().plans().get(plan).name();
    }

    String baselineName() {
        return base().baseline().name();
    }

    String currency() {
        return base().input().currency();
    }

    /** A saving as a subtitle says it. */
    String saving(double amount) {
        return amount < 0 ? "costs " + money(-amount) + " more" : "saves " + money(amount);
    }

    String money(double amount) {
        return Figures.money(currency(), amount);
    }

    /** That figures are read off a fitted surface, and by how much it misses them; nothing where it misses nothing. */
    String fitted(Miss missed) {
        return missed.equals(Miss.NONE) ? "" : " Read off a fitted surface: 95 draws of a hundred miss by " + money(missed.within())
                + " at most, the largest seen by " + money(missed.largest()) + ".";
    }

    /** Label of an axis of savings. */
    String savingLabel() {
        return "Saving against “" + baselineName() + "” (" + StatedMoney.present(base().input()) + ")";
    }

    /** Name of an input, or behind the inputs of a group. */
    String input(int place) {
        return results.inputs().name(place);
    }
}
