package org.amberyard.study;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import org.amberyard.core.money.FiscalYears;
import org.amberyard.model.funding.Programme;

/**
 * Fiscal years whose purchases a programme pays for: those that it names, as far as their first day lies within its delivery
 * dates. Purchases fall on the first day of their fiscal year.
 *
 * @param first first year
 * @param last last year; before the first when there is none
 */
record ProgrammeWindow(int first, int last) {

    static ProgrammeWindow of(Programme programme, FiscalYears fiscal) {
        int first = date(programme.getFirstDate()).map(from -> firstYear(from, fiscal)).orElse(Integer.MIN_VALUE);
        int last = date(programme.getLastDate()).map(fiscal::of).orElse(Integer.MAX_VALUE);
        return new ProgrammeWindow(Math.max(programme.getFirstYear(), first), Math.min(programme.getLastYear(), last));
    }

    private static int firstYear(LocalDate from, FiscalYears fiscal) {
        int year = fiscal.of(from);
        return fiscal.start(year).equals(from) ? year : year + 1;
    }

    private static Optional<LocalDate> date(String text) {
        try {
            return text == null || text.isBlank() ? Optional.empty() : Optional.of(LocalDate.parse(text.strip()));
        } catch (DateTimeParseException e) {
            return Optional.empty(); // Found by the rules of the model, which keep the study from being evaluated.
        }
    }

    /** True when it pays for purchases of a fiscal year. */
    boolean contains(int year) {
        return year >= first && year <= last;
    }
}
