package org.amberyard.model.meta;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import org.amberyard.model.common.Month;
import org.amberyard.model.funding.Programme;

/**
 * Fiscal years whose purchases a programme pays for: those that it names, as far as their first day lies within its dates.
 * Purchases fall on the first day of their fiscal year.
 *
 * @param first first year
 * @param last last year; before the first when there is none
 */
public record ProgrammeYears(int first, int last) {

    /** Years of a programme where fiscal years begin in a month. */
    public static ProgrammeYears of(Programme programme, Month fiscalYearStart) {
        int first = date(programme.getFirstDate()).map(from -> firstYearFrom(from, fiscalYearStart)).orElse(Integer.MIN_VALUE);
        int last = date(programme.getLastDate()).map(by -> lastYearBy(by, fiscalYearStart)).orElse(Integer.MAX_VALUE);
        return new ProgrammeYears(Math.max(programme.getFirstYear(), first), Math.min(programme.getLastYear(), last));
    }

    private static int firstYearFrom(LocalDate from, Month start) {
        int year = from.getYear();
        while (firstDay(year, start).isBefore(from)) {
            year++;
        }
        return year;
    }

    private static int lastYearBy(LocalDate by, Month start) {
        int year = by.getYear() + 1;
        while (firstDay(year, start).isAfter(by)) {
            year--;
        }
        return year;
    }

    /** True when it pays for purchases of a fiscal year. */
    public boolean contain(int year) {
        return year >= first && year <= last;
    }

    /** First day of a fiscal year, which bears the number of the calendar year in which it ends. */
    public static LocalDate firstDay(int fiscalYear, Month start) {
        return LocalDate.of(start == Month.JANUARY ? fiscalYear : fiscalYear - 1, start.getValue() + 1, 1);
    }

    /** A day written as year, month and day; empty for anything else. */
    public static Optional<LocalDate> date(String text) {
        try {
            return text == null ? Optional.empty() : Optional.of(LocalDate.parse(text.strip()));
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }
}
