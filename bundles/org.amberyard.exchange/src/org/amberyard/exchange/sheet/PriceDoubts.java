package org.amberyard.exchange.sheet;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;
import java.util.TreeMap;

/**
 * What makes figures of a table of prices look like something else: ratios and shares stand in such tables as prices do, and are read
 * alike. Bounds are from common practice, no source.
 *
 * @param header header of the column
 * @param baseYear base year of the study
 * @param prices figures by fiscal year, that of the base year among them
 * @param rows numbers of their rows by fiscal year
 */
record PriceDoubts(String header, int baseYear, TreeMap<Integer, Double> prices, Map<Integer, Integer> rows) {
    /** No price of a study has changed so much from one point to the next. */
    private static final double LEAP = 3;
    /** Figures beyond these are written with an exponent. */
    private static final double LEAST_PLAIN = 1e-6;
    private static final double MOST_PLAIN = 1e9;

    void tell(SheetOutcome outcome) {
        double base = prices.get(baseYear);
        if (base == 1) {
            outcome.remark("“" + header + "” has 1 for " + baseYear + ", so its figures are taken for ratios to the price of that year, which stays as the "
                    + "study has it.");
        } else if (base < 1) {
            outcome.remark("“" + header + "” has " + text(base) + " for " + baseYear + ": a price, or a ratio or share? It is taken for a price; where it is a "
                    + "ratio to another year, or a change by the year, write prices, or ratios with 1 for " + baseYear + ".");
        }
        prices.forEach((year, price) -> {
            Integer before = prices.lowerKey(year);
            if (before != null && isLeap(prices.get(before), price)) {
                outcome.remark("Row " + rows.get(year) + ": “" + header + "” goes from " + text(prices.get(before)) + " in " + before + " (row "
                        + rows.get(before) + ") to " + text(price) + " in " + year + "; is one a ratio or share, or in another unit?");
            }
        });
    }

    private static boolean isLeap(double one, double next) {
        return next > LEAP * one || one > LEAP * next;
    }

    private static String text(double figure) {
        BigDecimal rounded = new BigDecimal(figure).round(MathContext.DECIMAL32).stripTrailingZeros();
        return figure < LEAST_PLAIN || figure > MOST_PLAIN ? rounded.toString() : rounded.toPlainString();
    }
}
