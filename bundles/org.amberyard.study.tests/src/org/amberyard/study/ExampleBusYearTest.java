package org.amberyard.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.CostLedger;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.plan.UpkeepCalibrations;
import org.amberyard.core.plan.UpkeepYear;
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
    private static final double LABOUR = 58;
    /** First year of a new full-size bus: two inspections, brakes, heating, body. */
    private static final double SHARED_TASKS = 2 * (60 + 3.5 * LABOUR) + (100 + 1.5 * LABOUR) + (120 + 2 * LABOUR)
            + (150 + 2.5 * LABOUR);
    private static final double WORK_ORDERS = 148410.82;

    private static StudyResult result;

    @BeforeAll
    static void evaluate() throws Exception {
        result = ExampleStudy.result();
    }

    @Test
    void dieselBusB01InTheBaseYear() {
        CostLedger ledger = result.baseline().ledger();
        assertEquals(4950, MILES, 1e-9);
        assertEquals(4950 / 5.734 * 3.657 * 1.008, ledger.amount(0, 0, CostCategory.FUEL), CENT);
        double tasks = 2 * 1.54 * (60 + 3.5 * LABOUR) + 1.9 * (100 + 1.5 * LABOUR) + 2.08 * (120 + 2 * LABOUR)
                + 2.44 * (150 + 2.5 * LABOUR) + (190 + 1.5 * LABOUR) + (210 + 1.5 * LABOUR);
        UpkeepYear kept = result.baseline().upkeep().get(0);
        assertEquals(kept.factor() * tasks + kept.failures().cost(), ledger.amount(0, 0, CostCategory.UPKEEP), CENT);
        assertEquals(BASE_VALUE * 1.005 * 0.0065, ledger.amount(0, 0, CostCategory.INSURANCE), CENT);
        assertEquals(3182.24 + kept.cost() + 16.33, ledger.rowTotal(0, 0), 3 * CENT);
    }

    @Test
    void likeForLikeBusOnB01sRouteInItsFirstYear() {
        CostLedger ledger = result.baseline().ledger();
        double prices = Math.pow(1.005, 3);
        assertEquals(158_000 * prices, ledger.amount(0, 3, CostCategory.BUS_PURCHASE), CENT);
        assertEquals(-BASE_VALUE * prices, ledger.amount(0, 3, CostCategory.BUS_SALE), CENT);
        double tasks = SHARED_TASKS + (190 + 1.5 * LABOUR) + (210 + 1.5 * LABOUR);
        assertEquals(tasks + failures(0, 3), ledger.amount(0, 3, CostCategory.UPKEEP), CENT);
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
        double tasks = SHARED_TASKS + (40 + 4 * LABOUR) + (80 + 1.5 * LABOUR);
        assertEquals(tasks + failures(1, 1), ledger.amount(0, 1, CostCategory.UPKEEP), CENT);
        assertEquals(price * 0.99 * 0.0065, ledger.amount(0, 1, CostCategory.INSURANCE), CENT);
    }

    /** The new bus on B01's route is not calibrated: no bus of its type was measured. */
    private static double failures(int plan, int year) {
        UpkeepYear kept = result.plans().get(plan).upkeep().stream()
                .filter(u -> u.record().place() == 0 && u.record().year() == year).findFirst().orElseThrow();
        assertEquals(1, kept.factor(), 0);
        return kept.failures().cost();
    }

    /** Together the buses of each type cost in the long run what their work orders say: 148,411 USD for all, on 0.15 % more miles than modelled. */
    @Test
    void calibratedUpkeepIsThatOfTheWorkOrders() {
        UpkeepCalibrations calibrations = UpkeepCalibrations.of(result.input(), result.duty());
        double calibrated = 0;
        for (int type = 0; type < result.input().types().size(); type++) {
            calibrated += calibrations.of(type).factor() * calibrations.of(type).modelled();
        }
        assertEquals(WORK_ORDERS, calibrated, WORK_ORDERS * 3e-3);
    }
}
