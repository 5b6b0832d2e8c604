package org.amberyard.charts;

import java.util.stream.DoubleStream;
import org.amberyard.core.math.RoundingDust;
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

    /** How many draws, and of which seed. */
    String draws(int draws) {
        return Figures.whole(draws) + " draws, seed " + results.inputs().seed();
    }

    /** Why the values of an input are not the study's own: they are steps of what it is varied over. Nothing where that is among them. */
    String steps(int input, double... values) {
        return results.single().map(run -> run.spread(input)).filter(spread -> DoubleStream.of(values)
                .allMatch(value -> RoundingDust.swept(value - spread.base(), spread.high() - spread.low()) != 0))
                .map(spread -> " " + input(input) + " goes in equal steps from " + results.inputs().words(input, spread.low()) + " to "
                        + results.inputs().words(input, spread.high()) + ", its low and high; the study’s own, "
                        + results.inputs().words(input, spread.base()) + ", is none of them.")
                .orElse("");
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
