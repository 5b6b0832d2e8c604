package org.amberyard.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.amberyard.core.duty.DayBlock;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.duty.EnergyUse;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.CostLedger;
import org.junit.jupiter.api.Test;

/**
 * One bus in one year worked by hand, to the cent: only the energy of the route is taken from the duty stage, everything
 * from there to the ledger is spelled out here with the figures of {@link TinyDistrict}.
 */
class BusYearByHandTest {
    private static final double CENT = 0.005;
    private final StudyInput study = TinyDistrict.study();
    private final DutyTable duty = DutyTable.of(study.duty());

    @Test
    void dieselBusInItsBaseYear() {
        CostLedger ledger = TinyDistrict.evaluated(study, duty, 0).ledger();
        EnergyUse route = duty.use(0, TinyDistrict.DIESEL).orElseThrow().year();
        double fuelL = 0.95 * route.fuelL() + 100 * 1.8;
        double km = 0.95 * 180 * 2 * 24;
        assertEquals(fuelL * 0.95 * 1.01, ledger.amount(0, 0, CostCategory.FUEL), CENT);
        assertEquals(fuelL * 0.025 * 0.9, ledger.amount(0, 0, CostCategory.EXHAUST_FLUID), CENT);
        assertEquals(km * (0.26 + 12 * 0.026), ledger.amount(0, 0, CostCategory.UPKEEP), CENT);
        double value = 3500 + (150_000 - 3500) * (1 - 12 / 15.0);
        assertEquals(0.01 * value, ledger.amount(0, 0, CostCategory.INSURANCE), CENT);
        assertEquals(120, ledger.amount(0, 0, CostCategory.REGISTRATION), CENT);
        assertEquals(0, ledger.amount(0, 0, CostCategory.ELECTRIC_ENERGY), 0);
    }

    @Test
    void electricBusInItsFirstYear() {
        CostLedger ledger = TinyDistrict.evaluated(study, duty, 1).ledger();
        double km = 0.95 * 180 * 2 * 24;
        EnergyUse route = duty.use(0, TinyDistrict.ELECTRIC).orElseThrow().year();
        double batteryKwh = 0.95 * route.batteryKwh();
        double price = 330_000 * 0.99;
        assertEquals(price, ledger.amount(0, 1, CostCategory.BUS_PURCHASE), CENT);
        double priceThen = price * 1.025;
        double award = Math.min(60_000, 10_000 + 0.5 * (priceThen - 150_000 * 1.025));
        assertEquals(-award / 1.025, ledger.amount(0, 1, CostCategory.FUNDING), CENT);
        assertEquals((batteryKwh + 0.95 * route.gridKwh()) / 0.88 * 0.105, ledger.amount(0, 1, CostCategory.ELECTRIC_ENERGY), CENT);
        assertEquals(km * 0.22, ledger.amount(0, 1, CostCategory.UPKEEP), CENT);
        assertEquals(0.01 * 330_000 * Math.pow(0.99, 2), ledger.amount(0, 1, CostCategory.INSURANCE), CENT);
        double left = 3500 + (330_000 - 3500) * (1 - 3 / 15.0);
        assertEquals(-left * Math.pow(0.99, 4), ledger.amount(0, 3, CostCategory.BUS_VALUE_LEFT), CENT);
    }

    @Test
    void yardInItsFirstYear() {
        CostLedger ledger = TinyDistrict.evaluated(study, duty, 1).ledger();
        int yard = 3;
        assertEquals(2 * 15_000, ledger.amount(yard, 1, CostCategory.PORTS), CENT);
        assertEquals(2 * 6000, ledger.amount(yard, 3, CostCategory.PORTS), CENT, "hardware lives two years");
        assertEquals(80_000, ledger.amount(yard, 1, CostCategory.SITE_WORKS), CENT);
        assertEquals(9000, ledger.amount(yard, 1, CostCategory.TRAINING_AND_TOOLS), CENT);
        double portAward = Math.min(0.5 * 30_000 * 1.025, 2 * 5000) / 1.025;
        assertEquals(-portAward - 40_000, ledger.amount(yard, 1, CostCategory.FUNDING), CENT);
        List<DayBlock.Leg> legs = duty.use(0, TinyDistrict.ELECTRIC).orElseThrow().days(0, true, true).findFirst().orElseThrow().legs();
        double nightHours = (390 + 1440 - legs.get(1).arrivalMin()) / 60;
        double nightKw = (legs.get(0).use().batteryKwh() + legs.get(1).use().batteryKwh() + legs.get(0).use().gridKwh()) / 0.88
                / nightHours;
        double standbyKw = 2 * 0.015;
        double taper = 1.001;
        double demand = ledger.amount(yard, 1, CostCategory.ELECTRIC_DEMAND);
        assertTrue(12 * 5 * (nightKw + standbyKw) <= demand + CENT && demand < 12 * 5 * (taper * nightKw + standbyKw),
                "a little more at first, because the pack takes less when it is nearly full: " + demand);
        assertEquals(1200, ledger.amount(yard, 1, CostCategory.ELECTRIC_FIXED), CENT);
        assertEquals(500, ledger.amount(yard, 1, CostCategory.PORT_FEES), CENT);
        double worksLeft = 80_000 * 27 / 30.0 + 2 * 9000 * 27 / 30.0 + 2 * 6000 * 0.5;
        assertEquals(-worksLeft, ledger.amount(yard, 3, CostCategory.INFRASTRUCTURE_LIFE_LEFT), CENT);
    }
}
