package org.amberyard.core.plan;

import java.util.List;
import org.amberyard.core.duty.BlockCheck;

/**
 * Can an electric type do a route: judged on the worst of the operated design days, new and at the end of the pack's service
 * (just before it is replaced or the bus retires), charged overnight only and also between runs at the yard. Each outcome is
 * that of its own worst day.
 *
 * @param route place of the route
 * @param type place of the vehicle type
 * @param batteryKw power into the battery that the judgement counts on, kW
 * @param worstMonth month of the worst day of a new pack charged overnight only, 0 for January
 * @param newOvernight new pack, charged overnight only
 * @param newMidday new pack, charged between runs too
 * @param agedOvernight aged pack, charged overnight only
 * @param agedMidday aged pack, charged between runs too
 * @param agedYears age of the aged pack in years
 * @param agedHealth present over nominal capacity of the aged pack
 * @param firstFailingAge age in years at which the route first fails under the study's charging habit; -1 when it does not in
 *            the pack's service
 * @param verdict the answer in one word
 * @param months outcome of every month that is driven, under the study's charging habit
 */
public record RouteFit(int route, int type, double batteryKw, int worstMonth, BlockCheck.Outcome newOvernight,
        BlockCheck.Outcome newMidday, BlockCheck.Outcome agedOvernight, BlockCheck.Outcome agedMidday, int agedYears,
        double agedHealth, int firstFailingAge, Verdict verdict, List<Month> months) {

    public RouteFit {
        months = List.copyOf(months);
    }

    /**
     * The worst day of one month.
     *
     * @param month month, 0 for January
     * @param whenNew outcome with a new pack
     * @param whenAged outcome with an aged pack
     */
    public record Month(int month, BlockCheck.Outcome whenNew, BlockCheck.Outcome whenAged) {
    }

    /** Answers. */
    public enum Verdict {
        /** Passes on the worst day to the end of the pack's life, charged overnight only. */
        FOR_LIFE("passes for life"),
        /** Passes overnight only while new; charging between runs carries it to the end of the pack's life. */
        MIDDAY_WHEN_AGED("midday charge when aged"),
        /** Needs charging between runs from the start, and passes with it to the end of the pack's life. */
        MIDDAY_ALWAYS("midday charge always"),
        /** Passes while new, with charging between runs if need be, but not to the end of the pack's life. */
        ONLY_WHEN_NEW("fails when aged"),
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
