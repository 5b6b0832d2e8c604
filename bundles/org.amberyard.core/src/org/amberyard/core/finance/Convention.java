package org.amberyard.core.finance;

/**
 * When in its first tax year property counts as placed in service, and in its last as disposed of (IRS Publication 946, "Which
 * Convention Applies"; mid-quarter where more than 40 % of the year's property comes in its last quarter).
 */
public enum Convention {
    /** In the middle of the year. */
    HALF_YEAR(0.5),
    /** In the middle of the first quarter. */
    FIRST_QUARTER(0.875),
    /** In the middle of the second quarter. */
    SECOND_QUARTER(0.625),
    /** In the middle of the third quarter. */
    THIRD_QUARTER(0.375),
    /** In the middle of the fourth quarter. */
    FOURTH_QUARTER(0.125);

    private final double firstYear;

    Convention(double firstYear) {
        this.firstYear = firstYear;
    }

    /** Part of the first year in which property counts as in service. */
    public double firstYear() {
        return firstYear;
    }

    /** Part of the last year in which it does, disposed of at the same time of a year at which it was placed in service. */
    public double lastYear() {
        return 1 - firstYear;
    }
}
