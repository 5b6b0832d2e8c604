package org.amberyard.core.money;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Rates, times and lives, by hand. */
class MoneyRulesTest {
    private static final double EXACT = 1e-12;
    private static final MoneyRates RATES = new MoneyRates(0.03, 0.02);

    @Test
    void ratesFollowFisher() {
        assertEquals(1.03 * 1.02 - 1, RATES.nominal(), EXACT);
        assertEquals(0.03, MoneyRates.ofNominal(1.03 * 1.02 - 1, 0.02).real(), EXACT);
        assertEquals(0.02, MoneyRates.ofNominal(0.05, 0.02).inflation());
        assertEquals(1.05 / 1.02 - 1, RATES.realRise(0.05), EXACT);
        assertEquals(1.02 * 1.02 * 1.02, RATES.inflationFactor(3), EXACT);
        assertEquals(0.03, RATES.rateFor(MoneyBasis.CONSTANT));
        assertEquals(1.03 * 1.02 - 1, RATES.rateFor(MoneyBasis.NOMINAL), EXACT);
    }

    @Test
    void costsFallAtTheStartOverTheYearOrAtItsEnd() {
        MoneyRules end = new MoneyRules(RATES, MoneyBasis.NOMINAL, false);
        MoneyRules middle = new MoneyRules(RATES, MoneyBasis.NOMINAL, true);
        assertEquals(4, end.time(CostCategory.PORTS, 4));
        assertEquals(5, end.time(CostCategory.FUEL, 4));
        assertEquals(4.5, middle.time(CostCategory.FUEL, 4));
        assertEquals(5, middle.time(CostCategory.AWARDS_DUE, 4));
        assertEquals(10 * Math.pow(1.02, 4.5), middle.stated(10, CostCategory.FUEL, 4), EXACT);
        assertEquals(10 * Math.pow(1.02 * 1.03, -5), end.present(10, CostCategory.FUEL, 4), EXACT);
        assertEquals(Math.pow(1.02 * 1.03, -4), end.presentFactor(FlowTime.START, 4), EXACT);
        assertFalse(end.midYear());
        assertTrue(middle.at(new MoneyRates(0.05, 0)).midYear());
        assertEquals(0.05, middle.at(new MoneyRates(0.05, 0)).rates().real());
    }

    @Test
    void aCategoryOfEachTimeAndItsNames() {
        for (FlowTime time : FlowTime.values()) {
            assertSame(time, CostCategory.at(time).time());
        }
        assertEquals("Fuel", CostCategory.FUEL.label());
        assertEquals("Upkeep and fees", CostCategory.Group.UPKEEP.label());
    }

    @Test
    void aLifeRunsOutInAStraightLineAndNotBeyond() {
        assertEquals(1, StraightLine.lifeLeft(0, 12));
        assertEquals(0.75, StraightLine.lifeLeft(3, 12), EXACT);
        assertEquals(0, StraightLine.lifeLeft(12, 12), EXACT);
        assertEquals(0, StraightLine.lifeLeft(20, 12));
        assertEquals(1, StraightLine.lifeLeft(-2, 12));
    }
}
