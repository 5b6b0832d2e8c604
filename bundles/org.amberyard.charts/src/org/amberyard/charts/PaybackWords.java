package org.amberyard.charts;

import org.amberyard.core.money.Payback;

/** A payback in words. */
public final class PaybackWords {
    private PaybackWords() {
    }

    /**
     * For example {@code pays back after 9.3 years}.
     *
     * @param lastYear calendar number of the last year studied
     */
    public static String of(Payback payback, int lastYear) {
        return switch (payback.outcome()) {
            case NO_DIFFERENCE -> "makes no difference in any year";
            case AT_ONCE -> "pays back at once";
            case AFTER -> "pays back after " + Figures.years(payback.years());
            case NEVER -> "does not pay back by the end of " + lastYear;
        };
    }
}
