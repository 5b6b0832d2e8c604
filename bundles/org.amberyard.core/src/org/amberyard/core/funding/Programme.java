package org.amberyard.core.funding;

/**
 * A funding programme, as dated data. Its amounts are in money of the year of the purchase, as notices state them.
 *
 * @param name name
 * @param kind whose money it is
 * @param priority place in the order in which programmes are applied to a line, lowest first
 * @param firstYear first year of the study in which a purchase is paid for
 * @param lastYear last year of the study in which a purchase is paid for
 * @param probability probability of the award, 1 for certain; a plan may count on certain awards only
 * @param offer what it pays for
 * @param budget what it can pay in all
 * @param match what it wants from elsewhere
 * @param conditions what it asks of purchases
 * @param payout when and how it pays
 */
public record Programme(String name, MoneyKind kind, int priority, int firstYear, int lastYear, double probability,
        Offer offer, Budget budget, Match match, Conditions conditions, Payout payout) {

    /** True when it pays for purchases of a year of the study. */
    public boolean paysIn(int year) {
        return year >= firstYear && year <= lastYear;
    }

    /** True when nobody doubts that it pays. */
    public boolean isCertain() {
        return probability >= 1;
    }
}
