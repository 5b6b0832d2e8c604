package org.amberyard.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.amberyard.core.money.DiscountFactor;
import org.amberyard.core.money.MoneyRates;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Discount factors of Fuller and Petersen, "Life-Cycle Costing Manual for the Federal Energy Management Program", NIST
 * Handbook 135, 1995 edition, chapters 3 and 4: formulas from memory, values computed from them independently.
 */
class DiscountFactorReferenceTest {
    private static final double RELATIVE = 1e-9;

    @ParameterizedTest
    @CsvSource({"0.01,1,0.9900990099", "0.01,10,0.9052869547", "0.03,10,0.7440939149", "0.03,15,0.6418619474",
        "0.05,20,0.3768894829", "0.07,10,0.5083492921", "0.07,20,0.2584190028"})
    void singlePresentValue(double rate, int years, double expected) {
        assertEquals(expected, DiscountFactor.single(rate, years), expected * RELATIVE);
    }

    @ParameterizedTest
    @CsvSource({"0.01,5,4.853431239", "0.03,10,8.530202837", "0.03,15,11.93793509", "0.03,20,14.87747486",
        "0.07,10,7.023581541", "0.07,20,10.59401425"})
    void uniformPresentValue(double rate, int years, double expected) {
        assertEquals(expected, DiscountFactor.uniform(rate, years), expected * RELATIVE);
    }

    @ParameterizedTest
    @CsvSource({"0.03,0.02,15,13.8861094", "0.03,0.03,15,15", "0.03,-0.01,10,8.094606331", "0.05,0.01,12,9.406676902"})
    void uniformPresentValueOfRisingPrices(double rate, double rise, int years, double expected) {
        assertEquals(expected, DiscountFactor.uniformRising(rate, rise, years), expected * RELATIVE);
    }

    /** Standard engineering economy; the one-percent and two-percent rows are also the annual factors of grant guidelines. */
    @ParameterizedTest
    @CsvSource({"0.03,10,0.1172305066", "0.03,15,0.08376658046", "0.07,15,0.1097946247", "0.01,10,0.1055820766",
        "0.02,5,0.2121583941"})
    void capitalRecovery(double rate, int years, double expected) {
        assertEquals(expected, DiscountFactor.capitalRecovery(rate, years), expected * RELATIVE);
    }

    /** OMB Circular A-94, mid-year factors at 7 %: formula from memory, values computed from it. */
    @ParameterizedTest
    @CsvSource({"1,0.9667", "2,0.9035", "5,0.7375", "10,0.5258"})
    void midYearFactors(int year, double expected) {
        assertEquals(expected, DiscountFactor.single(0.07, year - 0.5), 5e-5);
    }

    /**
     * OMB Circular A-94, appendix C, January 2000: nominal rates of 5.9 % (3 years) and 6.3 % (30 years), real rates of 3.8 % and
     * 4.2 %. Both pairs imply about the same inflation, so each nominal rate gives its real one.
     */
    @ParameterizedTest
    @CsvSource({"0.059,0.038,0.020231", "0.063,0.042,0.020154"})
    void realOfNominal(double nominal, double real, double inflation) {
        assertEquals(real, MoneyRates.ofNominal(nominal, inflation).real(), 1e-6);
        assertEquals(nominal, new MoneyRates(real, inflation).nominal(), 1e-6);
    }

    /** A real rate of 3 % with inflation of 2.3 % is a nominal rate of 5.369 %: OMB Circular A-94, rule for consistency; computed. */
    @Test
    void nominalOfReal() {
        assertEquals(0.05369, new MoneyRates(0.03, 0.023).nominal(), 1e-12);
    }
}
