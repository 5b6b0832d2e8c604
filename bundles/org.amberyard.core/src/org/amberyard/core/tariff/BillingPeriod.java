package org.amberyard.core.tariff;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/**
 * Days that one bill is for; they need be no calendar month.
 *
 * @param first first day that is billed
 * @param last last day that is billed
 */
public record BillingPeriod(LocalDate first, LocalDate last) {
    private static final int SHORTEST_MONTH = 25;
    private static final int LONGEST_MONTH = 35;
    private static final double DAYS_OF_MONTH = 30;
    private static final int MONTHS = 12;

    /**
     * @throws IllegalArgumentException when the last day lies before the first
     */
    public BillingPeriod {
        if (last.isBefore(first)) {
            throw new IllegalArgumentException("the period ends on " + last + " but starts on " + first);
        }
    }

    /** Number of days. */
    public int days() {
        return (int) ChronoUnit.DAYS.between(first, last) + 1;
    }

    /** Every day of the period. */
    public List<LocalDate> dates() {
        return first.datesUntil(last.plusDays(1)).toList();
    }

    /**
     * How many months are charged: one for periods of 25 to 35 days, as meters are read; others by days, thirty to a month
     * (common practice, no source).
     */
    public double months() {
        return days() >= SHORTEST_MONTH && days() <= LONGEST_MONTH ? 1 : days() / DAYS_OF_MONTH;
    }

    /** Month of the day in its middle, 0 for January: the month by whose name such a bill goes. */
    public int month() {
        return first.plusDays(days() / 2).getMonthValue() - 1;
    }

    /**
     * The period that lies a number of months before.
     *
     * @param months number of months, 1 for the period just before
     */
    BillingPeriod before(int months) {
        return new BillingPeriod(first.minusMonths(months), first.minusMonths(months - 1L).minusDays(1));
    }

    /** Its parts by calendar months, in order. */
    List<BillingPeriod> byMonth() {
        List<BillingPeriod> parts = new ArrayList<>();
        for (LocalDate from = first; !from.isAfter(last);) {
            LocalDate end = from.withDayOfMonth(from.lengthOfMonth());
            parts.add(new BillingPeriod(from, end.isAfter(last) ? last : end));
            from = end.plusDays(1);
        }
        return parts;
    }

    /**
     * Month by which it goes in a row of such periods, 0 for January: that of most of its first thirty days. Unlike those of their middle
     * days, these months follow one another however long each month is.
     */
    int monthOfRow() {
        return (first.getMonthValue() - 1 + (first.getDayOfMonth() > DAYS_OF_MONTH / 2 ? 1 : 0)) % MONTHS;
    }

    /** Its days before one of its parts, by calendar months in order; none before the first part. */
    List<BillingPeriod> upTo(BillingPeriod part) {
        return part.first.isAfter(first) ? new BillingPeriod(first, part.first.minusDays(1)).byMonth() : List.of();
    }

    /** Both periods and what lies between them. */
    BillingPeriod until(BillingPeriod later) {
        return new BillingPeriod(first, later.last);
    }

    /** First and last day in words. */
    public String words() {
        return first + " to " + last;
    }
}
