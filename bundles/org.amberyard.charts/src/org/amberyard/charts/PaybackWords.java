package org.amberyard.charts;

import org.amberyard.core.money.Payback;
import org.amberyard.core.plan.StudyInput;

/** A payback in words. */
public final class PaybackWords {
    private PaybackWords() {
    }

    /**
     * For example {@code pays back after 9.3 years (in 2035)}; years count from the start of the base year.
     */
    public static String of(Payback payback, StudyInput study) {
        return switch (payback.outcome()) {
            case NO_DIFFERENCE -> "makes no difference in any year";
            case AT_ONCE -> "pays back at once";
            case AFTER -> "pays back after " + Figures.years(payback.years()) + " (in "
                    + (study.baseYear() + (int) payback.years()) + ")";
            case NEVER -> "does not pay back by the end of " + (study.baseYear() + study.years() - 1);
        };
    }
}
