package org.amberyard.core.plan;

import org.amberyard.core.duty.BlockCheck;

/**
 * Can an electric type do a route: judged on the worst operated day of the year, new and at the end of the pack's life,
 * charged overnight only and also between runs at the yard.
 *
 * @param route place of the route
 * @param type place of the vehicle type
 * @param worstMonth month of the worst day, 0 for January
 * @param newOvernight new pack, charged overnight only
 * @param newMidday new pack, charged between runs too
 * @param agedOvernight pack at its end-of-life capacity, charged overnight only
 * @param agedMidday pack at its end-of-life capacity, charged between runs too
 * @param firstFailingAge age in years at which the route first fails as the pack fades under the study's charging habit;
 *            -1 when it does not before the pack is replaced
 * @param verdict the answer in one word
 */
public record RouteFit(int route, int type, int worstMonth, BlockCheck.Outcome newOvernight,
        BlockCheck.Outcome newMidday, BlockCheck.Outcome agedOvernight, BlockCheck.Outcome agedMidday,
        int firstFailingAge, Verdict verdict) {

    /** Answers. */
    public enum Verdict {
        /** Passes on the worst day to the end of the pack's life, charged overnight only. */
        FOR_LIFE("passes for life"),
        /** Passes overnight only while new; charging between runs carries it to the end of the pack's life. */
        MIDDAY_WHEN_AGED("midday charge when aged"),
        /** Needs charging between runs from the start, and passes with it to the end of the pack's life. */
        MIDDAY_ALWAYS("midday charge always"),
        /** Passes while new but not to the end of the pack's life, whatever the charging. */
        ONLY_WHEN_NEW("only while new"),
        /** Fails on the worst day even when new. */
        FAILS("fails");

        private final String label;

        Verdict(String label) {
            this.label = label;
        }

        /** Words for tables and charts. */
        public String label() {
            return label;
        }
    }

    /** Outcome with a new pack under a charging habit. */
    public BlockCheck.Outcome whenNew(boolean midday) {
        return midday ? newMidday : newOvernight;
    }

    /** Outcome with an aged pack under a charging habit. */
    public BlockCheck.Outcome whenAged(boolean midday) {
        return midday ? agedMidday : agedOvernight;
    }
}
