package org.amberyard.core.duty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.battery.CapacityFade;
import org.junit.jupiter.api.Test;

/** A day in round numbers: two runs of 40 kWh and 20 km, four hours apart, with a pack at 15 °C. */
class BlockCheckTest {
    private static final BatterySpec PACK = SampleBus.battery(100, 0.01, 2000, 0.7, new CapacityFade(0.01, 0));

    private static final BatterySpec PACK_WARM_ENOUGH = SampleBus.battery(100, 0, 2000, 0.7, new CapacityFade(0.01, 0));

    private static DayBlock.Leg leg(String name, double departureMin, boolean yardAfter, double packC) {
        return new DayBlock.Leg(name, departureMin, departureMin + 60, yardAfter, packC,
                new EnergyUse(20, 1, 40, 0, EnergyCauses.ZERO, 0, 0, 0, 0), packC, 0);
    }

    private static DayBlock day(boolean yardBetween, double packC) {
        return new DayBlock(List.of(leg("AM", 420, yardBetween, packC), leg("PM", 720, true, packC)));
    }

    private static BlockCheck overnight(double batteryKw, double reserve) {
        return new BlockCheck(batteryKw, 8, false, reserve);
    }

    @Test
    void marginIsWhatIsLeftAboveTheReserve() {
        BlockCheck.Outcome outcome = overnight(20, 0.1).of(day(true, 15), PACK, 1);
        assertEquals(90, outcome.usableKwh(), 1e-12);
        assertEquals(90 - 80 - 9, outcome.marginKwh(), 1e-12);
        assertEquals(0.5, outcome.marginKm(), 1e-12);
        assertEquals("PM", outcome.worstRun());
        assertTrue(outcome.passes() && outcome.refilled());
    }

    @Test
    void fadeAndColdTakeUsableEnergy() {
        assertFalse(overnight(20, 0.1).of(day(true, 15), PACK, 0.8).passes());
        BlockCheck.Outcome cold = overnight(20, 0).of(day(true, 0), PACK, 1);
        assertEquals(90 * (1 - 0.01 * 15), cold.usableKwh(), 1e-12);
        assertEquals(90 * (1 - 0.01 * 15) - 80, cold.marginKwh(), 1e-12);
    }

    @Test
    void middayChargeFillsOnlyAtTheYardAndOnlyToTheBrim() {
        assertEquals(90 - 80 + 20, new BlockCheck(5, 24, true, 0).of(day(true, 15), PACK, 1).marginKwh(), 1e-12);
        assertEquals(90 - 80, new BlockCheck(5, 24, true, 0).of(day(false, 15), PACK, 1).marginKwh(), 1e-12);
        assertEquals(90 - 40, new BlockCheck(100, 24, true, 0).of(day(true, 15), PACK, 1).marginKwh(), 1e-9);
        assertEquals(90 - 80, new BlockCheck(100, 24, true, 0).of(day(true, -10), PACK_WARM_ENOUGH, 1).marginKwh(), 1e-12,
                "a pack that is too cold takes nothing in");
    }

    /** A night brings 64 of the 80 kWh, so each day starts 16 lower: 10, -6; the second day fails. */
    @Test
    void aNightThatDoesNotFillThePackWearsTheWeekDown() {
        BlockCheck.Outcome outcome = overnight(8, 0).of(day(true, 15), PACK, 1);
        assertEquals(-6, outcome.marginKwh(), 1e-12);
        assertEquals(2, outcome.days());
        assertFalse(outcome.refilled());
    }

    @Test
    void whatFailsSoonerIsWorse() {
        BlockCheck.Outcome first = overnight(20, 0.2).of(day(true, 15), PACK, 1);
        BlockCheck.Outcome second = overnight(8, 0).of(day(true, 15), PACK, 1);
        BlockCheck.Outcome holds = overnight(20, 0).of(day(true, 15), PACK, 1);
        assertTrue(BlockCheck.Outcome.WORST_FIRST.compare(first, second) < 0);
        assertTrue(BlockCheck.Outcome.WORST_FIRST.compare(second, holds) < 0);
    }

    @Test
    void middaySessionIsSpreadOverTheTimeThatTheBusStands() {
        DayCharging charging = new BlockCheck(20, 8, true, 0).charging(day(true, 15), PACK);
        assertEquals(40, charging.midday().get(0).batteryKwh(), 1e-12);
        assertEquals(10, charging.midday().get(0).batteryKw(), 1e-12);
        assertEquals(40, charging.nightKwh(), 1e-12);
        assertEquals(80, new BlockCheck(20, 8, false, 0).charging(day(true, 15), PACK).nightKwh(), 1e-12);
    }

    @Test
    void momentsFollowTheDay() {
        List<BlockCheck.Moment> moments = new BlockCheck(5, 8, true, 0.1).moments(day(true, 15), PACK, 1);
        assertEquals(List.of(420.0, 480.0, 720.0, 780.0, 420.0 + 1440),
                moments.stream().map(BlockCheck.Moment::minute).toList());
        double[] left = {90, 50, 70, 30, 70};
        for (int i = 0; i < left.length; i++) {
            assertEquals(left[i] / 90, moments.get(i).chargeShare(), 1e-12);
            assertEquals(0.1, moments.get(i).floorShare(), 1e-12);
        }
    }
}
