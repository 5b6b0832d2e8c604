package org.amberyard.core.tariff;

import java.util.List;

/**
 * The billed demand is not less than a share of the highest demand of earlier months. It can raise a bill, never lower it.
 *
 * @param share share of the highest earlier demand, 0 to 1
 * @param priorMonths how many months before the billed one are looked at
 * @param counted hours and months whose demands count; they need not be those that the charge bills
 */
public record Ratchet(double share, int priorMonths, List<TariffPeriod> counted) {

    /**
     * @throws IllegalArgumentException when the share is not within 0 to 1 or no month is looked at
     */
    public Ratchet {
        counted = List.copyOf(counted);
        if (!(share >= 0 && share <= 1) || priorMonths < 1) {
            throw new IllegalArgumentException("ratchet of " + share + " over " + priorMonths
                    + " months must have a share of 0 to 1 and at least one month");
        }
    }

    /** A ratchet on the highest demand at any time. */
    public static Ratchet anyTime(double share, int priorMonths) {
        return new Ratchet(share, priorMonths, List.of(TariffPeriod.ALWAYS));
    }
}
