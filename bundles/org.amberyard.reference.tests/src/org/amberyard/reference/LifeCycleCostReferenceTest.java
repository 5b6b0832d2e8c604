package org.amberyard.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.amberyard.core.money.DiscountFactor;
import org.amberyard.core.money.Payback;
import org.junit.jupiter.api.Test;

/**
 * A life-cycle cost comparison by the method of NIST Handbook 135 (1995); the example's figures are invented, its results
 * were computed independently. Extra first cost 12,000; energy savings 1,500 and extra upkeep 200 a year; a replacement of
 * 1,000 at the end of year 8; a residual value of 2,000 at the end of year 15; 3 %.
 */
class LifeCycleCostReferenceTest {
    private static final double RATE = 0.03;
    private static final int YEARS = 15;

    @Test
    void netSavings() {
        double savings = 1300 * DiscountFactor.uniform(RATE, YEARS);
        double investment = 12_000 + 1000 * DiscountFactor.single(RATE, 8) - 2000 * DiscountFactor.single(RATE, 15);
        assertEquals(15_519.31561, savings, 0.01);
        assertEquals(11_505.68534, investment, 0.01);
        assertEquals(4_013.630273, savings - investment, 0.01);
    }

    @Test
    void discountedPaybackFallsInYearTwelve() {
        Payback payback = Payback.of(times(YEARS), cumulative(12_000, 1300, RATE, YEARS, 8, 1000));
        assertEquals(Payback.Outcome.AFTER, payback.outcome());
        assertEquals(12, Math.ceil(payback.years()));
    }

    /** Level flow of 150 on 1,000 at 5 %: 8.315624 years by a straight line within the ninth year (computed). */
    @Test
    void discountedPaybackOfLevelFlow() {
        Payback payback = Payback.of(times(YEARS), cumulative(1000, 150, 0.05, YEARS, 0, 0));
        assertEquals(8.315624, payback.years(), 1e-6);
    }

    /** 12,000 repaid by 1,300 a year: 9.2308 years (computed). */
    @Test
    void simplePayback() {
        assertEquals(9.2308, Payback.of(times(YEARS), cumulative(12_000, 1300, 0, YEARS, 0, 0)).years(), 1e-4);
    }

    private static double[] times(int years) {
        double[] times = new double[years + 1];
        for (int t = 0; t <= years; t++) {
            times[t] = t;
        }
        return times;
    }

    private static double[] cumulative(double first, double yearly, double rate, int years, int extraYear, double extra) {
        double[] saving = new double[years + 1];
        saving[0] = -first;
        for (int t = 1; t <= years; t++) {
            double flow = yearly - (t == extraYear ? extra : 0);
            saving[t] = saving[t - 1] + flow * DiscountFactor.single(rate, t);
        }
        return saving;
    }
}
