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
    private final double[] sums;

    private CostLedger(List<String> rows, int years, MoneyRules rules, double[] stated) {
        this.rows = rows;
        this.years = years;
        this.rules = rules;
        this.stated = stated;
        this.sums = sumsOfRows(rows.size(), years * CATEGORIES.length, stated);
    }

    private static double[] sumsOfRows(int rows, int columns, double[] cells) {
        double[] sums = new double[columns];
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                sums[column] += cells[row * columns + column];
            }
        }
        return sums;
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
        return stated[cell(years, row, year, category)];
    }

    /** Sum over the rows of one year and category. */
    public double amount(int year, CostCategory category) {
        return sums[cell(years, 0, year, category)];
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

    /** Collects further costs on top of these. */
    public Builder more() {
        return new Builder(rows, years, rules, stated.clone());
    }

    /** Present value of all costs at the base date. */
    public double presentValue() {
        double sum = 0;
        for (FlowTime time : FlowTime.values()) {
            double[] factors = IntStream.range(0, years).mapToDouble(year -> rules.presentFactor(time, year)).toArray();
            for (CostCategory category : CATEGORIES) {
                for (int year = 0; category.time() == time && year < years; year++) {
                    sum += amount(year, category) * factors[year];
                }
            }
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
        double[] factors = new double[years * CATEGORIES.length];
        for (CostCategory category : CATEGORIES) {
            for (int year = 0; year < years; year++) {
                factors[cell(years, 0, year, category)] = rules.stated(1, category, year);
            }
        }
        double[] stated = new double[constant.length];
        for (int cell = 0; cell < stated.length; cell++) {
            stated[cell] = factors[cell % factors.length] * constant[cell];
        }
        return new CostLedger(List.copyOf(rows), years, rules, stated);
    }

    /** Collects costs in constant money. */
    public static final class Builder {
        private final List<String> rows;
        private final int years;
        private final MoneyRules rules;
        private final double[] stated;

        /**
         * @param rows names of the rows
         * @param years number of years
         * @param rules how amounts are stated
         */
        public Builder(List<String> rows, int years, MoneyRules rules) {
            this(List.copyOf(rows), years, rules, new double[cells(rows.size(), years)]);
        }

        private Builder(List<String> rows, int years, MoneyRules rules, double[] stated) {
            this.rows = rows;
            this.years = years;
            this.rules = rules;
            this.stated = stated;
        }

        /** Adds a cost in constant money; a credit is negative. */
        public void add(int row, int year, CostCategory category, double constant) {
            stated[cell(years, row, year, category)] += rules.stated(constant, category, year);
        }

        /** The ledger of what has been added. */
        public CostLedger build() {
            return new CostLedger(rows, years, rules, stated.clone());
        }
    }
}
