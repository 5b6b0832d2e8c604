package org.amberyard.study;

import java.time.LocalDate;
import org.amberyard.core.money.FiscalYears;
import org.amberyard.model.funding.Programme;
import org.amberyard.model.meta.IsoDay;

/**
 * Fiscal years whose purchases a programme pays for: those that it names, as far as their first day lies within its delivery
 * dates. Purchases fall on the first day of their fiscal year.
 *
 * @param first first year
 * @param last last year; before the first when there is none
 */
record ProgrammeWindow(int first, int last) {

    static ProgrammeWindow of(Programme programme, FiscalYears fiscal) {
        int first = IsoDay.of(programme.getFirstDate()).map(from -> firstYear(from, fiscal)).orElse(Integer.MIN_VALUE);
        int last = IsoDay.of(programme.getLastDate()).map(fiscal::of).orElse(Integer.MAX_VALUE);
        return new ProgrammeWindow(Math.max(programme.getFirstYear(), first), Math.min(programme.getLastYear(), last));
    }

    private static int firstYear(LocalDate from, FiscalYears fiscal) {
        int year = fiscal.of(from);
        return fiscal.start(year).equals(from) ? year : year + 1;
    }

    /** True when it pays for purchases of a fiscal year. */
    boolean contains(int year) {
        return year >= first && year <= last;
    }
}
