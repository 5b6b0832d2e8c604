package org.amberyard.core.finance;

import java.util.Arrays;
import java.util.List;

/**
 * Classes of property under the general depreciation system of the US tax code, with the percentages of the half-year
 * convention from IRS Publication 946, "How To Depreciate Property", appendix A, table A-1. The table was read in copies made
 * by others, which agree, and the tests hold it against the rule that it follows.
 */
public enum PropertyClass {
    /** 3-year property. */
    YEARS_3(3, 2, 33.33, 44.45, 14.81, 7.41),
    /** 5-year property; buses are (Rev. Proc. 87-56, asset class 00.23; from memory). */
    YEARS_5(5, 2, 20, 32, 19.2, 11.52, 11.52, 5.76),
    /** 7-year property. */
    YEARS_7(7, 2, 14.29, 24.49, 17.49, 12.49, 8.93, 8.92, 8.93, 4.46),
    /** 10-year property. */
    YEARS_10(10, 2, 10, 18, 14.4, 11.52, 9.22, 7.37, 6.55, 6.55, 6.56, 6.55, 3.28),
    /** 15-year property; land improvements are (Rev. Proc. 87-56, asset class 00.3; from memory). */
    YEARS_15(15, 1.5, 5, 9.5, 8.55, 7.7, 6.93, 6.23, 5.9, 5.9, 5.91, 5.9, 5.91, 5.9, 5.91, 5.9, 5.91, 2.95),
    /** 20-year property. */
    YEARS_20(20, 1.5, 3.75, 7.219, 6.677, 6.177, 5.713, 5.285, 4.888, 4.522, 4.462, 4.461, 4.462, 4.461, 4.462, 4.461, 4.462,
            4.461, 4.462, 4.461, 4.462, 4.461, 2.231);

    private static final double PERCENT = 100;

    private final int years;
    private final double decliningFactor;
    private final List<Double> halfYear;

    PropertyClass(int years, double decliningFactor, double... halfYearPercent) {
        this.years = years;
        this.decliningFactor = decliningFactor;
        this.halfYear = Arrays.stream(halfYearPercent).map(p -> p / PERCENT).boxed().toList();
    }

    /** Recovery period, years. */
    public int years() {
        return years;
    }

    /** Rate of the declining balance over that of a straight line. */
    public double decliningFactor() {
        return decliningFactor;
    }

    /** Share of the basis deducted in each year of service under the half-year convention. */
    public List<Double> halfYearShares() {
        return halfYear;
    }
}
