package org.amberyard.core.finance;

import java.util.OptionalInt;
import org.amberyard.core.math.Checks;

/**
 * An asset on the books of a taxed operator.
 *
 * @param how how it is written off
 * @param basis price less funding, money of the purchase
 * @param boughtYear year of purchase
 * @param soldYear year in which it leaves, not before; empty when it stays
 */
public record DepreciatedAsset(Depreciation how, double basis, int boughtYear, OptionalInt soldYear) {

    public DepreciatedAsset {
        Checks.notNegative("Basis of depreciation", basis);
        Terms.require(soldYear.isEmpty() || soldYear.getAsInt() >= boughtYear, "An asset is sold before it is bought");
    }

    /** Deduction of a year. */
    public double deduction(int year) {
        if (soldYear.isPresent() && year >= soldYear.getAsInt()) {
            return year > soldYear.getAsInt() ? 0 : basis * how.shareWhenSold(year - boughtYear);
        }
        return basis * how.share(year - boughtYear);
    }

    /** Basis that has not been deducted by the end of a year; at least nothing. */
    public double basisAfter(int year) {
        double left = basis;
        for (int y = boughtYear; y <= year; y++) {
            left -= deduction(y);
        }
        return Math.max(0, left);
    }
}
