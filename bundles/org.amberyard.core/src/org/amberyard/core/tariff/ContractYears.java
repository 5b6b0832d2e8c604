package org.amberyard.core.tariff;

/**
 * Years of a contract, both included.
 *
 * @param from first year, 1 for the year in which service on the tariff starts
 * @param to last year
 */
public record ContractYears(int from, int to) {

    /** All years. */
    public static final ContractYears ALL = new ContractYears(1, Integer.MAX_VALUE);

    /**
     * @throws IllegalArgumentException when the years are before the first or end before they start
     */
    public ContractYears {
        if (from < 1 || to < from) {
            throw new IllegalArgumentException(
                    "contract years " + from + " to " + to + " must start with 1 or later and not end before they start");
        }
    }

    /** From a year on. */
    public static ContractYears from(int year) {
        return new ContractYears(year, Integer.MAX_VALUE);
    }

    /** True for a year within. */
    public boolean contains(int year) {
        return from <= year && year <= to;
    }

    /** First year from which being within or not stays as it is. */
    int settled() {
        return to == Integer.MAX_VALUE ? from : to + 1;
    }
}
