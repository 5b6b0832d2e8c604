package org.amberyard.workbench.views;

import java.text.NumberFormat;
import java.util.List;
import org.amberyard.report.ResultColumn;
import org.amberyard.report.ResultTable;

/**
 * Numbers of a column of results as they are shown: all with as many decimals as the largest needs, so that they line up, amounts of bills and
 * other small sums with their cents; a figure that would lose its digits by that keeps three of them.
 *
 * @param format digits and signs of the user; used on the event thread
 * @param decimals of the column
 * @param dust below this a figure is what rounding has left of nothing
 */
record ColumnFormat(NumberFormat format, int decimals, double dust) {
    private static final int READABLE_DIGITS = 3;
    private static final int CENTS = 2;
    private static final double SMALL_SUMS = 100_000;
    private static final double DUST = 1e-9;
    private static final int MOST_DECIMALS = 9;

    /** Those of some columns; sums of a table have their cents together or not at all. */
    static List<ColumnFormat> of(ResultTable table, List<Integer> columns) {
        boolean cents = columns.stream().filter(c -> isMoney(table, c)).flatMap(c -> figures(table, c).stream())
                .allMatch(f -> Math.abs(f) < SMALL_SUMS);
        return columns.stream().map(c -> of(figures(table, c), cents && isMoney(table, c))).toList();
    }

    private static boolean isMoney(ResultTable table, int column) {
        return table.columns().get(column).type() == ResultColumn.Type.MONEY;
    }

    private static List<Double> figures(ResultTable table, int column) {
        return table.rows().stream().map(r -> r.get(column)).filter(Double.class::isInstance).map(Double.class::cast).filter(Double::isFinite).toList();
    }

    private static ColumnFormat of(List<Double> figures, boolean cents) {
        double largest = figures.stream().mapToDouble(Math::abs).max().orElse(0);
        int whole = (int) Math.floor(Math.log10(Math.max(1, largest))) + 1;
        boolean entire = figures.stream().allMatch(f -> f == Math.rint(f));
        int decimals = entire ? 0 : cents ? CENTS : Math.max(0, READABLE_DIGITS - whole);
        NumberFormat format = NumberFormat.getNumberInstance();
        format.setMinimumFractionDigits(decimals);
        return new ColumnFormat(format, decimals, DUST * largest);
    }

    String text(double figure) {
        format.setMaximumFractionDigits(Math.max(decimals, decimals(Math.abs(figure))));
        return format.format(figure);
    }

    /** Decimals that three digits of a figure below ten take. */
    private int decimals(double size) {
        return size <= dust || size >= Math.pow(10, READABLE_DIGITS - 1) ? 0
                : Math.min(MOST_DECIMALS, READABLE_DIGITS - 1 - (int) Math.floor(Math.log10(size)));
    }
}
