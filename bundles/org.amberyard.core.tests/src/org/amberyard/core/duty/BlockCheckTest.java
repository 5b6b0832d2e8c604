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
                new EnergyUse(20, 1, 40, 0, 0, 0, 0, 0, 0, 0));
    }

    private static DayBlock day(boolean yardBetween, double outsideC) {
        return new DayBlock(List.of(leg("AM", 420, yardBetween, outsideC), leg("PM", 720, true, outsideC)));
    }

    @Test
    void marginIsWhatIsLeftAboveTheReserve() {
        BlockCheck.Outcome outcome = new BlockCheck(0, 0.1).of(day(true, 15), PACK, 1);
        assertEquals(90, outcome.usableKwh(), 1e-12);
        assertEquals(90 - 80 - 9, outcome.marginKwh(), 1e-12);
        assertEquals(0.5, outcome.marginKm(), 1e-12);
        assertEquals("PM", outcome.worstRun());
        assertTrue(outcome.passes());
    }

    @Test
    void fadeAndColdTakeUsableEnergy() {
        assertFalse(new BlockCheck(0, 0.1).of(day(true, 15), PACK, 0.8).passes());
        assertEquals(90 * (1 - 0.01 * 15), new BlockCheck(0, 0).of(day(true, -15), PACK, 1).usableKwh(), 1e-12);
    }

    @Test
    void middayChargeFillsOnlyAtTheYardAndOnlyToTheBrim() {
        BlockCheck midday = new BlockCheck(5, 0);
        assertEquals(90 - 80 + 20, midday.of(day(true, 15), PACK, 1).marginKwh(), 1e-12);
        assertEquals(90 - 80, midday.of(day(false, 15), PACK, 1).marginKwh(), 1e-12);
        assertEquals(90 - 40, new BlockCheck(100, 0).of(day(true, 15), PACK, 1).marginKwh(), 1e-12);
    }
}
