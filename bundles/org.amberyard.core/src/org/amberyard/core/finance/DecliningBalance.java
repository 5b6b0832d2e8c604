package org.amberyard.core.finance;

import java.util.ArrayList;
import java.util.List;

/**
 * Declining balance that changes to a straight line over the rest of the life in the first year in which that gives no less
 * (IRS Publication 946, "Figuring the Deduction Without Tables").
 */
final class DecliningBalance {
    private static final double DONE_YEARS = 1e-9;

    private DecliningBalance() {
    }

    /**
     * Share of the basis in each year of service.
     *
     * @param years life
     * @param factor rate over that of a straight line
     * @param firstYear part of the first year in service
     */
    static List<Double> shares(int years, double factor, double firstYear) {
        List<Double> shares = new ArrayList<>();
        double balance = 1;
        double inService = firstYear;
        for (double left = years; left > DONE_YEARS; inService = 1) {
            double share = Math.min(balance, balance * inService * Math.max(factor / years, 1 / left));
            shares.add(share);
            balance -= share;
            left -= inService;
        }
        return shares;
    }
}
