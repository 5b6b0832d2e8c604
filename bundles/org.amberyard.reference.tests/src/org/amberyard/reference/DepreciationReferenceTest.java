package org.amberyard.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.amberyard.core.finance.Convention;
import org.amberyard.core.finance.Depreciation;
import org.amberyard.core.finance.Macrs;
import org.amberyard.core.finance.PropertyClass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Tax depreciation against IRS Publication 946, "How To Depreciate Property", appendix A. The tables were read in copies made by
 * others: several for table A-1, which agree; fewer for the mid-quarter tables.
 */
class DepreciationReferenceTest {

    /** Table A-1 follows the rule of 26 USC 168(b) to the digits that it prints, and each column sums to 100 %. */
    @ParameterizedTest
    @EnumSource
    void tableA1FollowsItsRule(PropertyClass property) {
        List<Double> table = new Macrs(property, Convention.HALF_YEAR).shares();
        List<Double> rule = rule(property.years(), property.years() <= 10 ? 2 : 1.5);
        assertEquals(rule.size(), table.size());
        for (int year = 0; year < rule.size(); year++) {
            assertEquals(rule.get(year), table.get(year), 0.7e-4);
        }
        assertEquals(1, table.stream().mapToDouble(Double::doubleValue).sum(), 1e-12);
    }

    /** Balance after each year with half a year at the start: declining, then in equal parts of the years that are left. */
    private static List<Double> rule(int years, double factor) {
        List<Double> shares = new ArrayList<>(List.of(factor / years / 2));
        double balance = 1 - shares.get(0);
        for (double left = years - 0.5; left > 0.6; left--) {
            double share = balance * Math.max(factor / years, 1 / left);
            shares.add(share);
            balance -= share;
        }
        shares.add(balance);
        return shares;
    }

    /** Tables A-2 (first quarter) to A-5 (fourth quarter) for 5-year property, percent. */
    @ParameterizedTest
    @CsvSource({"FIRST_QUARTER,35.00 26.00 15.60 11.01 11.01 1.38", "SECOND_QUARTER,25.00 30.00 18.00 11.37 11.37 4.26",
        "THIRD_QUARTER,15.00 34.00 20.40 12.24 11.30 7.06", "FOURTH_QUARTER,5.00 38.00 22.80 13.68 10.94 9.58"})
    void midQuarterOfFiveYearProperty(Convention convention, String percent) {
        equals(percent, new Macrs(PropertyClass.YEARS_5, convention));
    }

    /** Tables for 7-year property; the second quarter's first year is printed as 17.85 for 17.857. */
    @ParameterizedTest
    @CsvSource({"FIRST_QUARTER,25.00 21.43 15.31 10.93 8.75 8.74 8.75 1.09",
        "SECOND_QUARTER,17.85 23.47 16.76 11.97 8.87 8.87 8.87 3.34", "THIRD_QUARTER,10.71 25.51 18.22 13.02 9.30 8.85 8.86 5.53",
        "FOURTH_QUARTER,3.57 27.55 19.68 14.06 10.04 8.73 8.73 7.64"})
    void midQuarterOfSevenYearProperty(Convention convention, String percent) {
        equals(percent, new Macrs(PropertyClass.YEARS_7, convention));
    }

    /** Table A-5 for 15-year property. */
    @Test
    void fourthQuarterOfFifteenYearProperty() {
        equals("1.25 9.88 8.89 8.00 7.20 6.48 5.90 5.90 5.91 5.90 5.91 5.90 5.91 5.90 5.91 5.17",
                new Macrs(PropertyClass.YEARS_15, Convention.FOURTH_QUARTER));
    }

    private static void equals(String percent, Macrs method) {
        double[] expected = Arrays.stream(percent.split(" ")).mapToDouble(Double::parseDouble).toArray();
        List<Double> found = method.shares();
        assertEquals(expected.length, found.size());
        for (int year = 0; year < expected.length; year++) {
            assertEquals(expected[year], 100 * found.get(year), 0.015);
        }
    }

    /**
     * Part of the year in the year of disposal under mid-quarter: 12.5, 37.5, 62.5 and 87.5 % by quarter (Publication 946,
     * "Figuring the Deduction for Property Sold or Disposed of"; from memory). Fleets sell at the time of year at which they buy.
     */
    @ParameterizedTest
    @CsvSource({"HALF_YEAR,0.5", "FIRST_QUARTER,0.125", "SECOND_QUARTER,0.375", "THIRD_QUARTER,0.625", "FOURTH_QUARTER,0.875"})
    void partOfTheYearOfDisposal(Convention convention, double part) {
        Depreciation how = new Depreciation(new Macrs(PropertyClass.YEARS_5, convention), 0);
        assertEquals(how.share(2) * part, how.shareWhenSold(2), 1e-12);
    }
}
