package org.amberyard.workbench.charts;

import org.amberyard.core.plan.DayKind;

/**
 * A day of a month that can be chosen.
 *
 * @param kind which day
 * @param extendedYear true for a day of the extended-year programme
 */
record Days(DayKind kind, boolean extendedYear) {
    private static final int KINDS = DayKind.values().length;

    /** Number of days to choose from. */
    static int count(boolean withExtendedYear) {
        return withExtendedYear ? 2 * KINDS : KINDS;
    }

    /** The day of a place: school days first. */
    static Days of(int place) {
        return new Days(DayKind.values()[place % KINDS], place >= KINDS);
    }

    static int place(DayKind kind, boolean extendedYear) {
        return kind.ordinal() + (extendedYear ? KINDS : 0);
    }

    String label() {
        return extendedYear ? kind.label() + Messages.Day_extendedYear : kind.label();
    }
}
