package org.amberyard.core.battery;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.amberyard.core.duty.SampleBus;
import org.junit.jupiter.api.Test;

/** A pack of 100 kWh nominal, of which nine tenths are used; figures counted by hand. */
class PackTest {
    private static final BatterySpec PACK = SampleBus.battery(100, 0.004, 2000, 0.7, new LinearFade(0.01, 0));

    @Test
    void whatIsUsedOfAPack() {
        assertEquals(72, PACK.usableKwh(0.8), 1e-9);
        assertEquals(0.05, PACK.cellShare(0), 1e-12, "as much is kept below as above");
        assertEquals(0.5, PACK.cellShare(0.5), 1e-12);
        assertEquals(0.95, PACK.cellShare(1), 1e-12);
    }

    /** Four thousandths for each degree below 15 °C. */
    @Test
    void coldLocksEnergyUp() {
        BatterySpec cold = new BatterySpec(100, 0.9, 0.004, PACK.resistance(), PACK.acceptance(), PACK.heat(), PACK.life());
        assertEquals(0.1, cold.lockedShare(-10), 1e-12);
        assertEquals(0, cold.lockedShare(15), 0);
        assertEquals(0, cold.lockedShare(30), 0);
        assertEquals(1, cold.lockedShare(-300), 0);
    }

    /** Half the power lasts twice as long at a quarter of the loss, so half of the energy lost. */
    @Test
    void resistanceTakesTheSquareOfThePowerAndMoreInTheCold() {
        assertEquals(2, PACK.resistanceKwh(50 * 50 * 2, 25), 1e-9);
        assertEquals(4 * Math.exp(2500 * (1 / 273.15 - 1 / 298.15)), PACK.resistanceKwh(100 * 100, 0), 1e-9);
        assertEquals(0.04 * 100 * 100 / 200, PACK.resistance().lossKwh(100 * 100, 25, 200), 1e-9);
    }

    private static final PackHeat SLOW = new PackHeat(10, 5, 4, 35, 2);

    /** In its time constant of 10 h it goes 63.2 % of the way, so on average it stands 36.8 % of the way from the air. */
    @Test
    void aStandingPackGoesTowardsTheAir() {
        double mean = 20 * (1 - Math.exp(-1));
        assertEquals(mean, SLOW.meanStandingC(20, 0, 10, false), 1e-9);
        assertEquals(-10 + 30 * (1 - Math.exp(-0.5)) * 2, SLOW.meanStandingC(20, -10, 5, false), 1e-9);
        assertEquals(mean, SLOW.meanStandingC(20, 0, 10, true), 1e-9, "within its limits");
        assertEquals(5, SLOW.meanStandingC(5, -20, 10, true), 0, "held by its heater");
        assertEquals(35, SLOW.meanStandingC(40, 38, 10, true), 0, "held by its cooler");
        assertEquals(38 + 2 * (1 - Math.exp(-1)), SLOW.meanStandingC(40, 38, 10, false), 1e-9);
    }

    @Test
    void heatFollowsTheSizeOfThePack() {
        assertEquals(0.3, SLOW.capacityKwhPerK(150), 1e-12);
        assertEquals(0.03, SLOW.conductanceKwPerK(150), 1e-12);
    }

    @Test
    void wearAddsUp() {
        FadeRate rate = new FadeRate(new LossGrowth(1, 0.02), new LossGrowth(1, 0.01));
        PackWear after = new PackWear(3, 400, new FadeState(0.06, 0.03)).after(rate, 150, 2);
        assertEquals(5, after.years(), 1e-12);
        assertEquals(700, after.fullCycles(), 1e-12);
        assertEquals(1 - 0.1 - 0.05, after.health(), 1e-12);
        assertEquals(1 - 0.1 - 0.03 - 3 * 0.02, new PackWear(3, 400, new FadeState(0.06, 0.03)).after(rate.withCycles(3), 150, 2).health(), 1e-12);
    }

    /** A loss of 2 % times the root of the years is 4 % after four, however the years are split. */
    @Test
    void aLossThatSlowsDownGoesOnFromWhereItIs() {
        LossGrowth root = new LossGrowth(0.5, 0.0004);
        assertEquals(0.04, root.after(0, 4), 1e-12);
        assertEquals(0.04, root.after(root.after(0, 1), 3), 1e-12);
        assertEquals(0.04, root.times(4).after(0, 1), 1e-12);
    }

    @Test
    void aPackWithoutATaperIsChargedEvenly() {
        TaperCurve even = new TaperCurve(45, 45, 0.9, 90);
        assertEquals(0.975, even.endShare(0.95, 100, 0.05), 1e-12);
        assertEquals(1, even.endShare(0.95, 100, 1), 0);
        assertEquals(0.1, even.hours(0.85, 0.9, 45), 1e-12);
    }

    /** Pack of 90 kWh usable that takes 100 kW up to 90 %, half of that at 95 %. */
    @Test
    void evenPowerIntoATaperIsAboveEnergyOverTime() {
        TaperCurve curve = new TaperCurve(100, 0, 0.9, 90);
        assertEquals(50, curve.acceptanceKw(0.95), 1e-9);
        assertEquals(0.95, curve.taperBeginsAt(50), 1e-12);
        assertEquals(1, curve.taperBeginsAt(0), 0);
        double kw = curve.evenKw(0.5, 0.95, 0.6, 200);
        assertEquals(0.95, curve.endShare(0.5, kw, 0.6), 1e-9);
        assertEquals(200, curve.evenKw(0.5, 0.99, 0.3, 200), 0, "not even the limit suffices");
    }
}
