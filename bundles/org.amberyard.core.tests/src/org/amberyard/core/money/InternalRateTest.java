package org.amberyard.core.money;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class InternalRateTest {

    private static InternalRate of(double... amounts) {
        return InternalRate.of(CashFlow.yearly(amounts));
    }

    @Test
    void oneRate() {
        InternalRate rate = of(-100, 110);
        assertEquals(InternalRate.Kind.ONE, rate.kind());
        assertEquals(0.1, rate.rates().get(0), 1e-14);
        assertEquals("10.00 %", rate.words());
    }

    @Test
    void noneWhenAllAmountsHaveOneSign() {
        assertEquals(InternalRate.Kind.NONE, of(5, 0, 5).kind());
        assertEquals("none between -99 % and 1,000 % a year", of(-5, -5).words());
    }

    /** -1 + 2/(1+i) - 3/(1+i)² is below zero at every rate, although its sign changes twice. */
    @Test
    void noneAlthoughTheSignChanges() {
        InternalRate rate = of(-1, 2, -3);
        assertEquals(InternalRate.Kind.NONE, rate.kind());
        assertEquals(2, rate.signChanges());
    }

    @Test
    void severalAreSaidInWords() {
        InternalRate rate = of(-1, 5, -6);
        assertEquals(InternalRate.Kind.SEVERAL, rate.kind());
        assertEquals("several: 100.00 % and 200.00 %; the flow changes sign 2 times, so none of them ranks it", rate.words());
    }

    /** (1 - 1.5/(1+i))² touches zero at 50 %. */
    @Test
    void aRateAtWhichTheFlowOnlyTouchesZeroIsOne() {
        InternalRate rate = of(4, -12, 9);
        assertEquals(InternalRate.Kind.ONE, rate.kind());
        assertEquals(0.5, rate.rates().get(0), 1e-9);
    }

    @Test
    void noFlowHasEveryRate() {
        assertEquals(InternalRate.Kind.EVERY, of(0, 0).kind());
        assertEquals("every rate: there is no difference", of(0, 0).words());
    }

    @Test
    void ratesOutsideTheRangeAreNotLookedFor() {
        assertEquals(InternalRate.Kind.NONE, of(-1, 12).kind());
        assertEquals(InternalRate.Kind.NONE, of(-1000, 1).kind());
        assertEquals(-0.98, of(-100, 2).rates().get(0), 1e-12);
        assertEquals(9.9, of(-1, 10.9).rates().get(0), 1e-12);
    }

    @Test
    void halfYearsCompound() {
        InternalRate rate = InternalRate.of(new CashFlow(2, List.of(-100.0, 0.0, 0.0, 121.0)));
        assertEquals(Math.pow(1.21, 1 / 1.5) - 1, rate.rates().get(0), 1e-12);
    }

    @Property(tries = 200)
    void presentValueIsZeroAtEveryRate(@ForAll long seed, @ForAll @IntRange(min = 1, max = 40) int years,
            @ForAll @IntRange(min = 1, max = 2) int stepsPerYear) {
        List<Double> amounts = new Random(seed).doubles(years * stepsPerYear + 1L, -1e6, 1e6).boxed().toList();
        CashFlow flow = new CashFlow(stepsPerYear, amounts);
        for (double rate : InternalRate.of(flow).rates()) {
            double size = new CashFlow(stepsPerYear, amounts.stream().map(Math::abs).toList()).presentValue(rate);
            assertEquals(0, flow.presentValue(rate), 1e-9 * size);
        }
        assertTrue(InternalRate.of(flow).rates().size() <= flow.signChanges());
    }

    /** Nominal rates follow from real ones by Fisher's rule, each of several. */
    @Property(tries = 100)
    void nominalRatesFollowFromRealOnes(@ForAll long seed, @ForAll @DoubleRange(min = -0.02, max = 0.1) double inflation) {
        double[] real = new Random(seed).doubles(16, -1e6, 1e6).toArray();
        double[] nominal = IntStream.range(0, real.length).mapToDouble(t -> real[t] * Math.pow(1 + inflation, t)).toArray();
        List<Double> expected = of(real).rates().stream().map(r -> (1 + r) * (1 + inflation) - 1)
                .filter(r -> r > -0.985 && r < 9.5).toList();
        List<Double> found = of(nominal).rates().stream().filter(r -> r > -0.985 && r < 9.5).toList();
        assertEquals(expected.size(), found.size());
        for (int i = 0; i < found.size(); i++) {
            assertEquals(expected.get(i), found.get(i), 1e-7);
        }
    }

    /** Where an investment has one rate, its modified rate lies between that rate and the rate of reinvestment. */
    @Property(tries = 100)
    void modifiedRateLiesBetweenReinvestmentAndInternalRate(@ForAll @DoubleRange(min = 1, max = 500) double perYear,
            @ForAll @DoubleRange(min = 0, max = 0.2) double earned) {
        double[] amounts = new double[11];
        Arrays.fill(amounts, perYear);
        amounts[0] = -1000;
        CashFlow flow = CashFlow.yearly(amounts);
        double internal = InternalRate.of(flow).rates().get(0);
        double modified = ModifiedRate.of(flow, earned, earned).orElseThrow();
        assertTrue(modified >= Math.min(internal, earned) - 1e-12 && modified <= Math.max(internal, earned) + 1e-12);
    }

    @Test
    void noModifiedRateWithoutOutlayOrReceipt() {
        assertEquals(OptionalDouble.empty(), ModifiedRate.of(CashFlow.yearly(1, 1), 0.1, 0.1));
        assertEquals(OptionalDouble.empty(), ModifiedRate.of(CashFlow.yearly(-1, -1), 0.1, 0.1));
    }
}
