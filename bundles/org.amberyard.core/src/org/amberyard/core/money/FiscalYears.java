package org.amberyard.core.money;

import java.time.LocalDate;
import org.amberyard.core.units.MonthNames;

/**
 * Fiscal years and their names. A study counts in them; each bears the number of the calendar year in which it ends or starts.
 *
 * @param startMonth month in which they start, 1 for January
 * @param namedByEnd true when they bear the number of the calendar year in which they end
 */
public record FiscalYears(int startMonth, boolean namedByEnd) {

    /** Calendar years. */
    public static final FiscalYears CALENDAR = new FiscalYears(1, true);
    private static final int MONTHS = 12;

    /**
     * @throws IllegalArgumentException when the month is none
     */
    public FiscalYears {
        if (startMonth < 1 || startMonth > MONTHS) {
            throw new IllegalArgumentException("The fiscal year must start in a month from 1 to 12 but starts in " + startMonth);
        }
    }

    /** First day of a fiscal year by its number. */
    public LocalDate start(int number) {
        return LocalDate.of(startMonth > 1 && namedByEnd ? number - 1 : number, startMonth, 1);
    }

    /** Number of the fiscal year in which a day lies. */
    public int of(LocalDate day) {
        int begun = day.getMonthValue() < startMonth ? day.getYear() - 1 : day.getYear();
        return startMonth > 1 && namedByEnd ? begun + 1 : begun;
    }

    /** Calendar year of a month of a fiscal year, the month counted from 0 for January. */
    public int calendarYear(int number, int month) {
        int begun = start(number).getYear();
        return month + 1 < startMonth ? begun + 1 : begun;
    }

    /** Name for tables: the bare number for a calendar year. */
    public String name(int number) {
        return startMonth == 1 ? String.valueOf(number) : "FY" + number;
    }

    /** First day of a fiscal year in words. */
    public String startInWords(int number) {
        LocalDate start = start(number);
        return start.getDayOfMonth() + " " + MonthNames.full(start.getMonthValue() - 1) + " "
                + start.getYear();
    }
}
