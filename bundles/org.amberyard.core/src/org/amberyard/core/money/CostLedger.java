package org.amberyard.core.money;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Costs of one plan: a row for each place in the fleet and one for what the yard shares, by year and category, in the
 * money that the study states. Immutable; built with a {@link Builder}.
 */
public final class CostLedger {
    private static final CostCategory[] CATEGORIES = CostCategory.values();

    private final List<String> rows;
    private final int years;
    private final MoneyRules rules;
    private final double[] stated;

    private CostLedger(List<String> rows, int years, MoneyRules rules, double[] stated) {
        this.rows = rows;
        this.years = years;
        this.rules = rules;
        this.stated = stated;
    }

    /** Names of the rows: the places in the fleet, then the yard. */
    public List<String> rows() {
        return rows;
    }

    /** Number of years. */
    public int years() {
        return years;
    }

    /** How amounts are stated and discounted. */
    public MoneyRules rules() {
        return rules;
    }

    /** One cell. */
    public double amount(int row, int year, CostCategory category) {
        return stated[index(row, year, category)];
    }

    /** Sum over the rows of one year and category. */
    public double amount(int year, CostCategory category) {
        double sum = 0;
        for (int row = 0; row < rows.size(); row++) {
            sum += amount(row, year, category);
        }
        return sum;
    }

    /** Sum over rows and years of one category. */
    public double amount(CostCategory category) {
        double sum = 0;
        for (int year = 0; year < years; year++) {
            sum += amount(year, category);
        }
        return sum;
    }

    /** Sum over the categories of one year. */
    public double yearTotal(int year) {
        double sum = 0;
        for (CostCategory category : CATEGORIES) {
            sum += amount(year, category);
        }
        return sum;
    }

    /** Sum over the categories of one row and year. */
    public double rowTotal(int row, int year) {
        double sum = 0;
        for (CostCategory category : CATEGORIES) {
            sum += amount(row, year, category);
        }
        return sum;
    }

    /** Sum of one year's costs that fall at one time of the year. */
    public double amount(int year, FlowTime time) {
        double sum = 0;
        for (CostCategory category : CATEGORIES) {
            if (category.time() == time) {
                sum += amount(year, category);
            }
        }
        return sum;
    }

    /** The sum with another ledger of the same rows, years and rules. */
    public CostLedger plus(CostLedger other) {
        return new CostLedger(rows, years, rules, IntStream.range(0, stated.length).mapToDouble(i -> stated[i] + other.stated[i]).toArray());
    }

    /** Present value of all costs at the base date. */
    public double presentValue() {
        double sum = 0;
        for (CostCategory category : CATEGORIES) {
            sum += presentValue(category);
        }
        return sum;
    }

    /** Present value of one category. */
    public double presentValue(CostCategory category) {
        double sum = 0;
        for (int year = 0; year < years; year++) {
            sum += rules.present(amount(year, category), category, year);
        }
        return sum;
    }

    private int index(int row, int year, CostCategory category) {
        return cell(years, row, year, category);
    }

    /** Number of cells of a ledger. */
    public static int cells(int rows, int years) {
        return rows * years * CATEGORIES.length;
    }

    /** Place of a cell among those of a ledger of some years. */
    public static int cell(int years, int row, int year, CostCategory category) {
        return (row * years + year) * CATEGORIES.length + category.ordinal();
    }

    /**
     * A ledger of amounts in constant money.
     *
     * @param rows names of the rows
     * @param years number of years
     * @param rules how amounts are stated
     * @param constant amounts by cell, see {@link #cell}
     */
    public static CostLedger ofConstant(List<String> rows, int years, MoneyRules rules, double[] constant) {
        double[] stated = new double[constant.length];
        for (CostCategory category : CATEGORIES) {
            for (int year = 0; year < years; year++) {
                double factor = rules.stated(1, category, year);
                for (int row = 0; row < rows.size(); row++) {
                    int cell = cell(years, row, year, category);
                    stated[cell] = factor * constant[cell];
                }
            }
        }
        return new CostLedger(List.copyOf(rows), years, rules, stated);
    }

    /** Collects costs in constant money. */
    public static final class Builder {
        private final CostLedger ledger;

        /**
         * @param rows names of the rows
         * @param years number of years
         * @param rules how amounts are stated
         */
        public Builder(List<String> rows, int years, MoneyRules rules) {
            ledger = new CostLedger(List.copyOf(rows), years, rules, new double[rows.size() * years * CATEGORIES.length]);
        }

        /** Adds a cost in constant money; a credit is negative. */
        public void add(int row, int year, CostCategory category, double constant) {
            ledger.stated[ledger.index(row, year, category)] += ledger.rules.stated(constant, category, year);
        }

        /** The ledger; the builder must not be used afterwards. */
        public CostLedger build() {
            return ledger;
        }
    }
}
