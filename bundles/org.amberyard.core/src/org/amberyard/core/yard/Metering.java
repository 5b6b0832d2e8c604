package org.amberyard.core.yard;

import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.amberyard.core.duty.Climate;
import org.amberyard.core.money.FiscalYears;
import org.amberyard.core.tariff.BillingCalendar;
import org.amberyard.core.tariff.DayClass;
import org.amberyard.core.tariff.HolidayRule;
import org.amberyard.core.tariff.Tariff;

/**
 * How charging is metered.
 *
 * @param tariff tariff of the meter
 * @param shared true when the building is behind the same meter
 * @param holidays holidays of the tariff
 * @param contractStart year in which the contract starts, counted from the base year; empty when it starts with the first port
 */
public record Metering(Tariff tariff, boolean shared, List<HolidayRule> holidays, OptionalInt contractStart) {

    public Metering {
        holidays = List.copyOf(holidays);
    }

    /** A meter of its own whose tariff has no holidays and starts with the first port. */
    public static Metering own(Tariff tariff) {
        return new Metering(tariff, false, List.of(), OptionalInt.empty());
    }

    /** Kinds of days of each month of a calendar year. */
    public List<Map<DayClass, Integer>> days(int calendarYear) {
        return days(FiscalYears.CALENDAR, calendarYear);
    }

    /** Kinds of days of each month of a fiscal year, from January to December. */
    public List<Map<DayClass, Integer>> days(FiscalYears fiscal, int number) {
        return IntStream.range(0, Climate.MONTHS)
                .mapToObj(month -> new BillingCalendar(fiscal.calendarYear(number, month), holidays).days(month)).toList();
    }

    /**
     * Year of the contract, 1 for the first; no later than that from which the tariff stays the same.
     *
     * @param year year, counted from the base year
     * @param firstPortYear year of the first port
     */
    public int contractYear(int year, int firstPortYear) {
        return Math.max(1, Math.min(tariff.settledYear(), year - contractStart.orElse(firstPortYear) + 1));
    }
}
