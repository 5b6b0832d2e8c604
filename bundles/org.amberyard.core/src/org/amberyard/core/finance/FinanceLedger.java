package org.amberyard.core.finance;

import java.util.Arrays;
import java.util.function.Predicate;
import org.amberyard.core.money.DiscountFactor;
import org.amberyard.core.money.MoneyRates;

/**
 * What financing and taxes add to a plan's costs, by year and line, in money of the time of payment. It stands beside the ledger
 * of costs, which holds every purchase as paid in cash: together they are the costs after financing. Immutable; built with a
 * {@link Builder}.
 */
public final class FinanceLedger {
    private static final FinanceLine[] LINES = FinanceLine.values();

    private final double[][] nominal;
    private final double[] present = new double[LINES.length];

    private FinanceLedger(int years) {
        nominal = new double[years][LINES.length];
    }

    /** Number of years. */
    public int years() {
        return nominal.length;
    }

    /** One cell. */
    public double amount(int year, FinanceLine line) {
        return nominal[year][line.ordinal()];
    }

    /** Sum of the lines of a kind in a year. */
    public double amount(int year, Predicate<FinanceLine> kind) {
        return Arrays.stream(LINES).filter(kind).mapToDouble(line -> amount(year, line)).sum();
    }

    /** Present value of one line at the base date. */
    public double presentValue(FinanceLine line) {
        return present[line.ordinal()];
    }

    /** Present value of the lines of a kind. */
    public double presentValue(Predicate<FinanceLine> kind) {
        return Arrays.stream(LINES).filter(kind).mapToDouble(this::presentValue).sum();
    }

    /** Present value of all. */
    public double presentValue() {
        return presentValue(line -> true);
    }

    /** Collects amounts in money of the time of payment. */
    public static final class Builder {
        private final FinanceLedger ledger;
        private final double rate;

        /**
         * @param years number of years
         * @param rates rates whose nominal discount rate applies
         */
        public Builder(int years, MoneyRates rates) {
            this.ledger = new FinanceLedger(years);
            this.rate = rates.nominal();
        }

        /**
         * Adds an amount.
         *
         * @param year year to which it belongs; those after the study are left out
         * @param timeYears time of payment after the base date
         */
        public void add(int year, double timeYears, FinanceLine line, double amount) {
            if (year < ledger.years()) {
                ledger.nominal[year][line.ordinal()] += amount;
                ledger.present[line.ordinal()] += amount * DiscountFactor.single(rate, timeYears);
            }
        }

        /** The ledger; the builder must not be used afterwards. */
        public FinanceLedger build() {
            return ledger;
        }
    }
}
