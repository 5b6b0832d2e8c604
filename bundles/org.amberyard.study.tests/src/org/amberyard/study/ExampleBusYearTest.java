package org.amberyard.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.CostLedger;
import org.amberyard.core.plan.StudyResult;
import org.junit.jupiter.api.BeforeAll;
import org.amberyard.core.yard.YardYear;
import org.junit.jupiter.api.Test;

/**
 * Bus years of the example worked by hand from what its tables say, to the cent. B01: 15 miles each in the morning and in the
 * afternoon on 176 school days, of which spares cover 6.25 %; 5.734 miles per gallon by its log; in service since 2008.
 */
class ExampleBusYearTest {
    private static final double CENT = 0.005;
    private static final double MILES = 2 * 15 * 176 * (1 - 0.0625);
    private static final double BASE_VALUE = 2500;

    private static StudyResult result;

    @BeforeAll
    static void evaluate() throws Exception {
        result = new StudyEvaluator().evaluate(StudyCompiler.compile(ExampleStudy.load()));
    }

    @Test
    void dieselBusB01InTheBaseYear() {
        CostLedger ledger = result.baseline().ledger();
        assertEquals(4950, MILES, 1e-9);
        assertEquals(4950 / 5.734 * 3.657 * 1.008, ledger.amount(0, 0, CostCategory.FUEL), CENT);
        assertEquals(4950 * (0.34 + 18 * 0.042), ledger.amount(0, 0, CostCategory.UPKEEP), CENT);
        assertEquals(BASE_VALUE * 1.005 * 0.0065, ledger.amount(0, 0, CostCategory.INSURANCE), CENT);
        assertEquals(3182.24 + 5425.20 + 16.33, ledger.rowTotal(0, 0), 3 * CENT);
    }

    @Test
    void likeForLikeBusOnB01sRouteInItsFirstYear() {
        CostLedger ledger = result.baseline().ledger();
        assertEquals(158_000 * 1.005, ledger.amount(0, 1, CostCategory.BUS_PURCHASE), CENT);
        assertEquals(-BASE_VALUE * 1.005, ledger.amount(0, 1, CostCategory.BUS_SALE), CENT);
        assertEquals(4950 * 0.42, ledger.amount(0, 1, CostCategory.UPKEEP), CENT);
    }

    /** The fund pays half of the difference to the diesel bus, below its cap; it has the old bus scrapped, so nothing is sold. */
    @Test
    void electricBusOnB01sRouteInItsFirstYear() {
        CostLedger ledger = result.plans().get(1).ledger();
        double price = 338_000 * 0.99;
        assertEquals(price, ledger.amount(0, 1, CostCategory.BUS_PURCHASE), CENT);
        assertEquals(-(price - 158_000 * 1.005) / 2, ledger.amount(0, 1, CostCategory.FUNDING), CENT);
        assertEquals(0, ledger.amount(0, 1, CostCategory.BUS_SALE), 0);
        YardYear yard = result.plans().get(1).yards().get(1);
        double meterKwh = result.plans().get(1).fleet().inYear(1).get(0).meterKwh();
        double perKwh = yard.parts().energy() / yard.yardKwh();
        assertTrue(perKwh > 0.091 + 0.0062 && perKwh < 0.139, "mostly off-peak: " + perKwh);
        assertEquals(meterKwh * perKwh * Math.pow(1.006, 2), ledger.amount(0, 1, CostCategory.ELECTRIC_ENERGY), CENT);
        assertEquals(4950 * 0.36, ledger.amount(0, 1, CostCategory.UPKEEP), CENT);
        assertEquals(price * 0.99 * 0.0065, ledger.amount(0, 1, CostCategory.INSURANCE), CENT);
    }
}
