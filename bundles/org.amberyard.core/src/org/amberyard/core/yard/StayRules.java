package org.amberyard.core.yard;

import org.amberyard.core.charging.ChargePolicy;

/**
 * How the yard decides what is charged when.
 *
 * @param policy charging policy
 * @param midday true when buses may be plugged in between runs at the yard
 * @param reserveShare share of the usable energy that planning keeps
 */
public record StayRules(ChargePolicy policy, boolean midday, double reserveShare) {

    /** True when only what is needed is charged between runs. */
    boolean managed() {
        return policy == ChargePolicy.SPREAD || policy == ChargePolicy.LEAST_COST;
    }
}
