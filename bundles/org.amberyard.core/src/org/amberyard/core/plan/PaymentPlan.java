package org.amberyard.core.plan;

import java.util.List;
import java.util.OptionalDouble;

/**
 * How a plan is paid for.
 *
 * @param financing what is paid for over time; the rest is paid in cash
 * @param yearlyCap most that may be appropriated in a year, money of the year; empty without a limit
 */
public record PaymentPlan(List<Financing> financing, OptionalDouble yearlyCap) {

    /** Cash, without a limit. */
    public static final PaymentPlan CASH = new PaymentPlan(List.of(), OptionalDouble.empty());

    public PaymentPlan {
        financing = List.copyOf(financing);
    }
}
