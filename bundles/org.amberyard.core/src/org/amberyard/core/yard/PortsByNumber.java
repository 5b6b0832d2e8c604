package org.amberyard.core.yard;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import org.amberyard.core.charging.ChargePolicy;

/**
 * The cheapest ports of each number, from those that are cheapest when all are in use. Who has the best ports of a number
 * and one more of the cheapest type may leave that one unused and switched off. It does where swaps and bill
 * are dearer with it in use, by more than the standby power that it draws anyway. So from the fewest that serve on each number serves, and a port more never makes plug swaps and bill together dearer
 * than they were without it but for its standby. Queues for plugs alone do not see to that: each bus takes the plug at which it is ready
 * soonest, which is not where all together cost least.
 *
 * @param offer ports on offer
 * @param standbyCost what the standby power of one port adds to the bill, money per year
 * @param inUse the cheapest ports by number and policy that serve with all in use
 */
record PortsByNumber(PortOffer offer, double standbyCost, SortedMap<Integer, Map<ChargePolicy, PortChoice>> inUse) {
    /** Money of a year by which schedules differ that are alike. */
    private static final double ROUNDING_MONEY = 1;

    /** The cheapest of each number that was looked at, the fewest first. */
    List<PortChoice> under(ChargePolicy policy) {
        List<PortChoice> cheapest = new ArrayList<>();
        inUse.forEach((number, byPolicy) -> {
            PortChoice own = byPolicy.get(policy);
            PortChoice fewer = cheapest.isEmpty() ? null : cheapest.get(cheapest.size() - 1);
            PortChoice carried = fewer == null ? own : offer.withUnused(fewer, number - fewer.mix().ports());
            if (carried != null) {
                cheapest.add(own != null && own.cost() <= carried.cost() + standbyCost + ROUNDING_MONEY ? own : carried);
            }
        });
        return cheapest;
    }
}
