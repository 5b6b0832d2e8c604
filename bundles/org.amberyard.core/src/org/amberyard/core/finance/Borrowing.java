package org.amberyard.core.finance;

/** Terms on which a purchase is paid for over time. Rates are nominal yearly rates; a period's rate is its part of the year. */
public sealed interface Borrowing permits Amortisation, Lease, Bond {

    /**
     * Payments on a sum.
     *
     * @param amount sum borrowed, or price of what is leased
     */
    DebtSchedule schedule(double amount);
}
