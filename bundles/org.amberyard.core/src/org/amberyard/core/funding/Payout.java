package org.amberyard.core.funding;

import java.util.Optional;

/**
 * When and how an award becomes money.
 *
 * @param lagYears years from the purchase to the payment; zero for an advance
 * @param against the tax that it can be set against; empty when it is paid in cash
 */
public record Payout(int lagYears, Optional<Tax> against) {

    /** Cash at the time of the purchase. */
    public static final Payout ADVANCE = new Payout(0, Optional.empty());

    /**
     * Tax that a credit lowers, since nothing is paid out.
     *
     * @param perYear tax of the operator in each year before the credit, money of that year
     * @param carryYears years for which an unused credit is carried forward
     */
    public record Tax(double perYear, int carryYears) {
    }
}
