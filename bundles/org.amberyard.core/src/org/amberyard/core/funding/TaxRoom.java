package org.amberyard.core.funding;

import java.util.HashMap;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Tax of the operator that no credit has been set against yet. Credits of all programmes share it, in the order of their
 * awards; the oldest years are used first.
 */
final class TaxRoom {
    private final Map<Integer, Double> used = new HashMap<>();

    /** What a credit can still be set against from a year on, money. */
    double left(Payout.Tax tax, int firstYear) {
        double left = 0;
        for (int year = firstYear; year <= firstYear + tax.carryYears(); year++) {
            left += left(tax, year, used);
        }
        return left;
    }

    /** Sets a credit against tax from a year on; gives what is used by year. What is more than the tax is not used. */
    SortedMap<Integer, Double> use(Payout.Tax tax, int firstYear, double credit) {
        SortedMap<Integer, Double> taken = new TreeMap<>();
        double open = credit;
        for (int year = firstYear; year <= firstYear + tax.carryYears() && open > 0; year++) {
            double amount = Math.min(open, left(tax, year, used));
            if (amount > 0) {
                used.merge(year, amount, Double::sum);
                taken.put(year, amount);
                open -= amount;
            }
        }
        return taken;
    }

    private static double left(Payout.Tax tax, int year, Map<Integer, Double> used) {
        return Math.max(0, tax.perYear() - used.getOrDefault(year, 0.0));
    }
}
