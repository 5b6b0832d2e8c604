package org.amberyard.core.money;

import java.util.OptionalDouble;

/**
 * Modified internal rate of return: outlays are brought to the base date at a rate for money owed and receipts to the end at a
 * rate for money earned; the rate between the two sums is the only one and needs no search (Lin, "The modified internal rate of
 * return and investment criterion", The Engineering Economist 21, 1976; from memory).
 */
public final class ModifiedRate {
    private ModifiedRate() {
    }

    /**
     * Rate per year of a flow.
     *
     * @param flow the flow
     * @param owed rate per year at which outlays are discounted
     * @param earned rate per year at which receipts are invested until the end
     * @return the rate; empty when the flow has no outlay, no receipt or no length
     */
    public static OptionalDouble of(CashFlow flow, double owed, double earned) {
        double outlays = 0;
        double receipts = 0;
        for (int step = 0; step < flow.amounts().size(); step++) {
            double amount = flow.amounts().get(step);
            outlays += Math.max(0, -amount) * DiscountFactor.single(owed, flow.years(step));
            receipts += Math.max(0, amount) * DiscountFactor.single(earned, flow.years(step) - flow.length());
        }
        return outlays > 0 && receipts > 0 && flow.length() > 0
                ? OptionalDouble.of(Math.pow(receipts / outlays, 1 / flow.length()) - 1) : OptionalDouble.empty();
    }
}
