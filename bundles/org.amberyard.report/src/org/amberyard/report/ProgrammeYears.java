package org.amberyard.report;

import org.amberyard.core.funding.Limit;
import org.amberyard.core.funding.Programme;
import org.amberyard.core.funding.Refusal;

/** The years whose purchases a programme pays for, in words. */
public final class ProgrammeYears {
    private ProgrammeYears() {
    }

    /**
     * As a clause, with calendar years.
     *
     * @param programme the programme
     * @param baseYear calendar year of the base year
     */
    public static String of(Programme programme, int baseYear) {
        int first = baseYear + programme.firstYear();
        int last = baseYear + programme.lastYear();
        return "purchases of " + (first == last ? first : first + " to " + last);
    }

    /** A rule that refuses a purchase, with the years where it is about them. */
    public static String refusal(Programme programme, int baseYear, Refusal rule) {
        return rule.limit() == Limit.WINDOW ? "it pays for " + of(programme, baseYear) : rule.words();
    }
}
