package org.amberyard.core.tariff;

import java.util.ArrayList;
import java.util.List;

/**
 * Demand charges that pay for demand, as a credit for service at a higher voltage does, netted against charges of the same hours:
 * a schedule is made for what a kW costs in the end. A credit that no such charge outweighs is not worth a demand that nobody
 * needs; nothing is scheduled for it.
 *
 * @param prices the charges, none below 0
 * @param netted true when the charges ask at any demand what the charges and credits together ask
 */
record DemandCredits(List<DemandPrice> prices, boolean netted) {

    static DemandCredits of(List<DemandPrice> charges) {
        List<DemandPrice> prices = new ArrayList<>(charges.stream().filter(c -> c.price() >= 0).toList());
        boolean netted = true;
        for (DemandPrice credit : charges) {
            netted &= credit.price() >= 0 || net(credit, prices);
        }
        return new DemandCredits(List.copyOf(prices), netted);
    }

    private static boolean net(DemandPrice credit, List<DemandPrice> prices) {
        for (int place = 0; place < prices.size(); place++) {
            DemandPrice charge = prices.get(place);
            if (charge.countsAs(credit) && charge.price() + credit.price() >= 0) {
                prices.set(place, charge.with(charge.price() + credit.price()));
                return charge.measuredOnly() && credit.measuredOnly();
            }
        }
        return false;
    }
}
