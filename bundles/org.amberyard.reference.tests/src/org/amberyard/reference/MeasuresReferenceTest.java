package org.amberyard.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import org.amberyard.core.money.CashFlow;
import org.amberyard.core.money.CostEffectiveness;
import org.amberyard.core.money.DiscountFactor;
import org.amberyard.core.money.InternalRate;
import org.amberyard.core.money.LifeCycleSaving;
import org.amberyard.core.money.ModifiedRate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Measures of economic performance against published and independently computed values. */
class MeasuresReferenceTest {

    private static List<Double> rates(double... amounts) {
        return InternalRate.of(CashFlow.yearly(amounts)).rates();
    }

    /**
     * Ross, Westerfield and Jordan, "Fundamentals of Corporate Finance", problem on multiple rates of return (the flow was read
     * in a copy of the problem; the answer 25, 33.33, 42.86 and 66.67 % from memory). The rates are 1/4, 1/3, 3/7 and 2/3.
     */
    @Test
    void fourRatesOfReturn() {
        List<Double> found = rates(-252, 1431, -3035, 2850, -1000);
        assertEquals(4, found.size());
        assertEquals(1 / 4.0, found.get(0), 1e-9);
        assertEquals(1 / 3.0, found.get(1), 1e-9);
        assertEquals(3 / 7.0, found.get(2), 1e-9);
        assertEquals(2 / 3.0, found.get(3), 1e-9);
    }

    /** Lorie and Savage, "Three problems in rationing capital", Journal of Business 28, 1955: the oil pump; from memory. */
    @Test
    void oilPump() {
        List<Double> found = rates(-1600, 10_000, -10_000);
        assertEquals(2, found.size());
        assertEquals(0.25, found.get(0), 1e-12);
        assertEquals(4, found.get(1), 1e-12);
    }

    /** A question of an analysts' course, answer read as "approximately 38 % and 260 %"; exact are (10 ± √20) / 4 - 1. */
    @Test
    void twoRatesOfACourse() {
        List<Double> found = rates(-2000, 10_000, -10_000);
        assertEquals((10 - Math.sqrt(20)) / 4 - 1, found.get(0), 1e-12);
        assertEquals((10 + Math.sqrt(20)) / 4 - 1, found.get(1), 1e-12);
        assertEquals(0.38, found.get(0), 0.005);
        assertEquals(2.6, found.get(1), 0.02);
    }

    /** Examples of spreadsheet documentation, published as 8.66 % and -2.12 % (from memory), computed independently. */
    @Test
    void ratesOfASpreadsheet() {
        assertEquals(0.08663094804, rates(-70_000, 12_000, 15_000, 18_000, 21_000, 26_000).get(0), 1e-8);
        assertEquals(-0.02124484827, rates(-70_000, 12_000, 15_000, 18_000, 21_000).get(0), 1e-8);
    }

    /** Example of spreadsheet documentation, published as 12.61 % (from memory), computed independently. */
    @Test
    void modifiedRateOfASpreadsheet() {
        CashFlow flow = CashFlow.yearly(-120_000, 39_000, 30_000, 21_000, 37_000, 46_000);
        assertEquals(0.1260941304, ModifiedRate.of(flow, 0.10, 0.12).orElseThrow(), 1e-8);
    }

    /**
     * The invented example of {@link LifeCycleCostReferenceTest}, method of NIST Handbook 135 (1995), computed independently. No
     * worked example of the handbook itself could be read.
     */
    @Test
    void savingsToInvestmentAndAdjustedRate() {
        double saving = 1300 * DiscountFactor.uniform(0.03, 15);
        double investment = 12_000 + 1000 * DiscountFactor.single(0.03, 8) - 2000 * DiscountFactor.single(0.03, 15);
        LifeCycleSaving measures = new LifeCycleSaving(saving, investment, 0.03, 15);
        assertEquals(4013.630273, measures.netSaving(), 1e-5);
        assertEquals(1.34883887, measures.savingsToInvestment().orElseThrow(), 1e-8);
        assertEquals(0.0507544297, measures.adjustedRate().orElseThrow(), 1e-9);
        double[] flow = new double[16];
        Arrays.fill(flow, 1300);
        flow[0] = -12_000;
        flow[8] -= 1000;
        flow[15] += 2000;
        assertEquals(0.06979142145, rates(flow).get(0), 1e-9);
    }

    /**
     * US Department of Defense, MIL-HDBK-1003/13A, "Solar Heating of Buildings and Domestic Hot Water", tables 3-5a and 3-5c:
     * present worth over 25 years with payments in the middle of each year, by discount rate and price rise. Read in a copy; the
     * handbook prints 12.057 where the formula gives 12.055, and agrees to all digits elsewhere.
     */
    @ParameterizedTest
    @CsvSource({"0.10,0,9.52,0.005", "0.07,0,12.057,0.003", "0.07,0.05,19.931,0.0005", "0.07,0.08,28.146,0.0005"})
    void presentWorthWithMidYearPayments(double rate, double rise, double expected, double tolerance) {
        double middle = Math.pow((1 + rate) / (1 + rise), 0.5);
        assertEquals(expected, DiscountFactor.uniformRising(rate, rise, 25) * middle, tolerance);
    }

    /** Capital recovery factors of grant guidelines at 1 % and 2 % by years of project life: values computed, three digits. */
    @ParameterizedTest
    @CsvSource({"0.01,3,0.340", "0.01,5,0.206", "0.01,7,0.149", "0.01,10,0.106", "0.02,3,0.347", "0.02,5,0.212", "0.02,7,0.155",
        "0.02,10,0.111"})
    void capitalRecoveryOfGrantGuidelines(double rate, int years, double expected) {
        assertEquals(expected, DiscountFactor.capitalRecovery(rate, years), 5e-4);
    }

    /**
     * Formula of the California Air Resources Board, Carl Moyer Program Guidelines (from memory), limit of 17,720 USD a ton at
     * 1 % (2014 advisory); the project is invented and computed independently: a grant of 250,000 for ten years and a weighted
     * reduction of 0.45 + 0.02 + 20 × 0.015 tons a year.
     */
    @Test
    void costEffectivenessOfAGrant() {
        CostEffectiveness grant = new CostEffectiveness(250_000, 0.01, 10, 0.45 + 0.02 + 20 * 0.015);
        assertEquals(26_395.52, grant.annualCost(), 0.01);
        assertEquals(34_279.89, grant.costPerUnit(), 0.01);
        assertEquals(129_230.27, grant.largestCost(17_720), 0.01);
    }
}
