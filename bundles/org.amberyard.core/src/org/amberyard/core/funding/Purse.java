package org.amberyard.core.funding;

import java.util.HashMap;
import java.util.Map;

/** What a programme has left to pay while the lines are gone through. */
final class Purse {
    private final Budget budget;
    private final Map<Integer, Double> paidInYear = new HashMap<>();
    private double paid;
    private int buses;

    Purse(Budget budget) {
        this.budget = budget;
    }

    boolean hasBusLeft() {
        return buses < budget.maxBuses();
    }

    double left() {
        return Math.max(0, budget.total() - paid);
    }

    double left(int year) {
        return Math.max(0, budget.perYear() - paidInYear.getOrDefault(year, 0.0));
    }

    /**
     * A bus takes its place among those that the programme pays for once it takes part, whatever caps and budgets then leave of
     * its award: so a higher cap never costs a later bus its place.
     */
    void countBus() {
        buses++;
    }

    void pay(int year, double amount) {
        paid += amount;
        paidInYear.merge(year, amount, Double::sum);
    }
}
