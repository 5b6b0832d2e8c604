package org.amberyard.core.duty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.battery.CapacityFade;
import org.junit.jupiter.api.Test;

/** A day in round numbers: two runs of 40 kWh and 20 km, four hours apart, at 15 °C. */
class BlockCheckTest {
    private static final BatterySpec PACK = new BatterySpec(100, 0.9, 0.01, 2000, 0.7, new CapacityFade(0.01, 0));

    private static DayBlock.Leg leg(String name, double departureMin, boolean yardAfter, double outsideC) {
        return new DayBlock.Leg(name, departureMin, departureMin + 60, yardAfter, outsideC,
                new EnergyUse(20, 1, 40, 0, 0, 0, 0, 0, 0, 0, 0));
    }

    private static DayBlock day(boolean yardBetween, double outsideC) {
        return new DayBlock(List.of(leg("AM", 420, yardBetween, outsideC), leg("PM", 720, true, outsideC)));
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
        assertEquals(90 * (1 - 0.01 * 15), overnight(20, 0).of(day(true, -15), PACK, 1).usableKwh(), 1e-12);
    }

    @Test
    void middayChargeFillsOnlyAtTheYardAndOnlyToTheBrim() {
        assertEquals(90 - 80 + 20, new BlockCheck(5, 24, true, 0).of(day(true, 15), PACK, 1).marginKwh(), 1e-12);
        assertEquals(90 - 80, new BlockCheck(5, 24, true, 0).of(day(false, 15), PACK, 1).marginKwh(), 1e-12);
        assertEquals(90 - 40, new BlockCheck(100, 24, true, 0).of(day(true, 15), PACK, 1).marginKwh(), 1e-12);
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
}
