package org.amberyard.core.duty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.battery.LinearFade;
import org.amberyard.core.depot.ChargeWindow;
import org.junit.jupiter.api.Test;

/** A day in round numbers: two runs of 40 kWh and 20 km, four hours apart, with a pack at 15 °C. */
class BlockCheckTest {
    /** Eight hours, from 22:00 to 6:00. */
    private static final ChargeWindow NIGHT = new ChargeWindow(1320, 360);
    /** From the last run to the first. */
    private static final ChargeWindow ALL_NIGHT = new ChargeWindow(780, 420);
    private static final BatterySpec PACK = SampleBus.battery(100, 0.01, 2000, 0.7, new LinearFade(0.01, 0));

    private static final BatterySpec PACK_WARM_ENOUGH = SampleBus.battery(100, 0, 2000, 0.7, new LinearFade(0.01, 0));

    private static DayBlock.Leg leg(String name, double departureMin, boolean yardAfter, double packC) {
        return new DayBlock.Leg(name, departureMin, departureMin + 60, yardAfter, packC,
                new EnergyUse(20, 1, 40, 0, EnergyCauses.ZERO, 0, 0, 0, 0), packC, 0);
    }

    private static DayBlock day(boolean yardBetween, double packC) {
        return new DayBlock(List.of(leg("AM", 420, yardBetween, packC), leg("PM", 720, true, packC)), packC);
    }

    private static BlockCheck overnight(double batteryKw, double reserve) {
        return new BlockCheck(batteryKw, NIGHT, false, reserve);
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
        assertEquals(90 - 80 + 20, new BlockCheck(5, ALL_NIGHT, true, 0).of(day(true, 15), PACK, 1).marginKwh(), 1e-12);
        assertEquals(90 - 80, new BlockCheck(5, ALL_NIGHT, true, 0).of(day(false, 15), PACK, 1).marginKwh(), 1e-12);
        assertEquals(90 - 40, new BlockCheck(100, ALL_NIGHT, true, 0).of(day(true, 15), PACK, 1).marginKwh(), 1e-9);
        assertEquals(90 - 80, new BlockCheck(100, ALL_NIGHT, true, 0).of(new DayBlock(day(true, -10).legs(), 15), PACK_WARM_ENOUGH, 1)
                .marginKwh(), 1e-12,
                "a pack that is too cold takes nothing in");
    }

    @Test
    void chargingBetweenRunsTakesNoMoreTimeThanIsGiven() {
        BlockCheck whole = new BlockCheck(5, ALL_NIGHT, true, 0);
        assertEquals(90 - 80 + 5, whole.withMiddayHours(1).of(day(true, 15), PACK, 1).marginKwh(), 1e-12);
        assertEquals(90 - 80, whole.withMiddayHours(0).of(day(true, 15), PACK, 1).marginKwh(), 1e-12);
        assertEquals(90 - 80 + 20, whole.withMiddayHours(4).of(day(true, 15), PACK, 1).marginKwh(), 1e-12, "all of the stand");
        assertEquals(90 - 80 + 20, whole.withMiddayHours(9).of(day(true, 15), PACK, 1).marginKwh(), 1e-12);
    }

    /** A night brings 64 of the 80 kWh, so the days end at 10, -6 and, after nights from empty, -16. */
    @Test
    void aNightThatDoesNotFillThePackWearsTheWeekDown() {
        BlockCheck.Outcome outcome = overnight(8, 0).of(day(true, 15), PACK, 1);
        assertEquals(64 - 80, outcome.marginKwh(), 1e-12);
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
    void layoversFillThePackAsFarAsTheTimeAllows() {
        assertEquals(List.of(new LayoverCharge(480, 720, 40)), new BlockCheck(20, NIGHT, true, 0).layovers(day(true, 15), PACK, 1));
        assertEquals(List.of(), new BlockCheck(20, NIGHT, false, 0).layovers(day(true, 15), PACK, 1));
    }

    @Test
    void momentsFollowTheDay() {
        List<BlockCheck.Moment> moments = new BlockCheck(5, NIGHT, true, 0.1).moments(day(true, 15), PACK, 1);
        assertEquals(List.of(420.0, 480.0, 720.0, 780.0, 420.0 + 1440),
                moments.stream().map(BlockCheck.Moment::minute).toList());
        double[] left = {90, 50, 70, 30, 70};
        for (int i = 0; i < left.length; i++) {
            assertEquals(left[i] / 90, moments.get(i).chargeShare(), 1e-12);
            assertEquals(0.1, moments.get(i).floorShare(), 1e-12);
        }
    }

    /** Run from 22:00 to 5:00; only the quarter of an hour until 5:15 is left of the window. */
    @Test
    void aBusThatDrivesAtNightIsNotChargedMeanwhile() {
        DayBlock.Leg night = new DayBlock.Leg("Night", 1320, 1320 + 420, true, 15,
                new EnergyUse(20, 7, 40, 0, EnergyCauses.ZERO, 0, 0, 0, 0), 15, 0);
        BlockCheck.Outcome outcome = new BlockCheck(20, new ChargeWindow(1320, 315), false, 0)
                .of(new DayBlock(List.of(night), 15), PACK, 1);
        assertFalse(outcome.refilled());
        assertEquals(3, outcome.days(), "90, 50 + 5, 15 + 5, then short");
        assertEquals(5 - 40, outcome.marginKwh(), 1e-9, "in the end a night from empty is all there is");
    }

    @Test
    void aReserveThatIsNeverLeftFailsOnTheFirstDay() {
        BlockCheck.Outcome outcome = overnight(20, 1.2).of(day(true, 15), PACK, 1);
        assertEquals(1, outcome.days());
        assertEquals("PM", outcome.worstRun());
        assertEquals(90 - 80 - 1.2 * 90, outcome.marginKwh(), 1e-9);
    }

    @Test
    void aPackTooColdAtNightTakesNothing() {
        DayBlock cold = new DayBlock(day(true, 15).legs(), -12);
        assertFalse(overnight(20, 0).of(cold, PACK, 1).refilled());
        assertEquals(2, overnight(20, 0).of(cold, PACK, 1).days());
    }

    /** The figure falls evenly as the day gets harder, whether the bus fails on the first day or a later one. */
    @Property(tries = 200)
    void aHarderWeekNeverLeavesMore(@ForAll @DoubleRange(min = 5, max = 80) double kwh,
            @ForAll @DoubleRange(min = 1, max = 20) double batteryKw, @ForAll @DoubleRange(min = 0.1, max = 20) double moreKwh) {
        BlockCheck check = overnight(batteryKw, 0.15);
        assertTrue(check.of(dayOf(kwh + moreKwh), PACK, 1).marginShare() <= check.of(dayOf(kwh), PACK, 1).marginShare() + 1e-12);
    }

    @Property(tries = 200)
    void anOlderPackNeverLeavesMore(@ForAll @DoubleRange(min = 5, max = 120) double kwh,
            @ForAll @DoubleRange(min = 1, max = 20) double batteryKw, @ForAll @DoubleRange(min = 0.5, max = 1) double health) {
        BlockCheck check = overnight(batteryKw, 0.15);
        assertTrue(check.of(dayOf(kwh), PACK, health).marginKwh() <= check.of(dayOf(kwh), PACK, 1).marginKwh() + 1e-9);
    }

    private static DayBlock dayOf(double kwh) {
        DayBlock.Leg run = new DayBlock.Leg("AM", 420, 480, true, 15,
                new EnergyUse(20, 1, kwh, 0, EnergyCauses.ZERO, 0, 0, 0, 0), 15, 0);
        return new DayBlock(List.of(run), 15);
    }
}
