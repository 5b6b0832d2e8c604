package org.amberyard.core.charging;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.core.battery.TaperCurve;
import org.junit.jupiter.api.Test;

/** Three buses at two ports of 10 kW into the battery. All arrive at 16:00; bus 1 leaves at 05:30, 2 at 06:00, 3 at 06:30. */
class PlugQueueByHandTest {
    private static final double FOUR_PM = 960;
    private static final PlugIn ONE = SampleYard.bus(1, FOUR_PM, 1440 + 330, 40);
    private static final PlugIn TWO = SampleYard.bus(2, FOUR_PM, 1440 + 360, 20);
    private static final PlugIn THREE = SampleYard.bus(3, FOUR_PM, 1440 + 390, 30);

    private static Plugged at(YardCharging charging, int place) {
        return charging.assignment().plugged().get(place);
    }

    private static void assertTimes(Plugged plugged, double fromMin, double toMin, boolean swap) {
        assertEquals(fromMin, plugged.fromMin(), 1e-9);
        assertEquals(toMin, plugged.toMin(), 1e-9);
        assertEquals(swap, plugged.swap());
    }

    /** Bus 2 is full at 18:00, before bus 1 (20:00), so bus 3 follows it. */
    @Test
    void theThirdFollowsTheFirstToBeFull() {
        YardCharging charging = SampleYard.atOnce(SampleYard.stretch(ONE, TWO, THREE), SampleYard.slow(2));
        assertTimes(at(charging, 0), FOUR_PM, 1440 + 330, false);
        assertTimes(at(charging, 1), FOUR_PM, 1080, false);
        assertTimes(at(charging, 2), 1080, 1440 + 390, true);
        assertEquals(at(charging, 1).unit(), at(charging, 2).unit());
        assertEquals(1, charging.assignment().swaps());
        assertTrue(charging.served());
        assertEquals(12.5, charging.schedule().meterKw()[2][72], 1e-9, "from 18:00");
        assertEquals(0, charging.schedule().meterKw()[2][84], 0, "to 21:00");
    }

    /** Nobody is there from 17:00 to 04:30, so bus 3 gets a plug at 04:30 and has two hours: 20 of 30 kWh. */
    @Test
    void swapsOnlyWhenAPersonIsThere() {
        SwapHours hours = SampleYard.between(270, 1020);
        YardCharging charging = SampleYard.atOnce(SampleYard.stretch(hours, ONE, TWO, THREE), SampleYard.slow(2));
        assertTimes(at(charging, 2), 1440 + 270, 1440 + 390, true);
        assertEquals("B03 misses 06:30 by 10.0 kWh; 60 min more at its port would do",
                charging.schedule().shortfalls().get(0).words());
    }

    @Test
    void withNobodyThereTheThirdGetsNoPlug() {
        YardCharging charging = SampleYard.atOnce(SampleYard.stretch(SwapHours.never(1440), ONE, TWO, THREE),
                SampleYard.slow(2));
        assertEquals(THREE, charging.assignment().withoutPlug().get(0));
        assertEquals(0, charging.assignment().swaps());
        assertEquals(30, charging.schedule().shortKwh(), 1e-9);
    }

    /** Buses 2 and 3 share 16:00 to 06:30, 870 minutes, as 20 to 30: bus 3 is plugged in after 348 minutes, at 21:48. */
    @Test
    void spreadSplitsTheTimeByNeed() {
        YardCharging charging = SampleYard.spread(SampleYard.stretch(ONE, TWO, THREE), SampleYard.slow(2));
        assertTimes(at(charging, 1), FOUR_PM, FOUR_PM + 348, false);
        assertTimes(at(charging, 2), FOUR_PM + 348, 1440 + 390, true);
        assertEquals(50 / 14.5 / 0.8, charging.schedule().meterKw()[1][70], 1e-9);
        assertEquals(50 / 14.5 / 0.8, charging.schedule().meterKw()[2][10], 1e-9);
        assertTrue(charging.served());
    }

    /** The split would fall at 21:48; the person is there until 19:00, then again at 05:00, which is too late for 30 kWh. */
    @Test
    void theSplitFallsWhenAPersonIsThere() {
        YardCharging charging = SampleYard.spread(
                SampleYard.stretch(SampleYard.between(300, 1140), ONE, TWO, THREE), SampleYard.slow(2));
        assertTimes(at(charging, 2), 1140, 1440 + 390, true);
        assertTrue(charging.served());
    }

    @Test
    void enoughPlugsNeedNobody() {
        YardCharging charging = SampleYard.atOnce(SampleYard.stretch(SwapHours.never(1440), ONE, TWO, THREE),
                SampleYard.slow(3));
        assertEquals(0, charging.assignment().swaps());
        assertTrue(charging.served());
    }

    /** 40 kWh in 810 minutes is the tightest of the three and gets the fast port, the second in the list. */
    @Test
    void theTightestBusGetsTheStrongestPort() {
        List<PortUnit> units = new ArrayList<>(SampleYard.slow(1));
        units.addAll(PortUnit.of(SampleYard.FAST, 1, 1));
        units.addAll(SampleYard.slow(1));
        YardCharging charging = SampleYard.atOnce(SampleYard.stretch(TWO, THREE, ONE), units);
        assertEquals(1, at(charging, 2).unit());
        assertEquals(0, at(charging, 1).unit(), "then bus 3");
        assertEquals(2, at(charging, 0).unit());
    }

    /** 150 kWh do not go through a slow port in 14 h, so two buses follow each other at the fast one. */
    @Test
    void aPlugOfOnesOwnIsGivenUpWhereItLeavesABusShort() {
        PlugIn big = SampleYard.bus(1, FOUR_PM, 1440 + 330, 150, new BusAcceptance(0, 100,
                new TaperCurve(500, 500, 1, 200)));
        PlugIn other = SampleYard.bus(2, FOUR_PM, 1440 + 360, 145, big.acceptance());
        List<PortUnit> units = new ArrayList<>(PortUnit.of(SampleYard.FAST, 1, 1));
        units.addAll(PortUnit.of(SampleYard.port("weak", true, 5, 0.9), 1, 1));
        YardCharging charging = SampleYard.atOnce(SampleYard.stretch(big, other), units);
        assertTrue(charging.served());
        assertEquals(1, charging.assignment().swaps());
    }

    /** A late run keeps bus 1 out until 20:00; bus 2 uses the only plug before, and a person makes room for bus 1. */
    @Test
    void whoComesFirstUsesTheGapBeforeABusThatLeavesSooner() {
        PlugIn late = SampleYard.bus(1, 1200, 1440 + 330, 40);
        YardCharging charging = SampleYard.atOnce(SampleYard.stretch(SampleYard.between(1200, 1230), late, TWO),
                SampleYard.slow(1));
        assertTimes(at(charging, 1), FOUR_PM, 1200, false);
        assertTimes(at(charging, 0), 1200, 1440 + 330, true);
        assertTrue(charging.served());
    }

    /** Nobody is there at 20:00 to make room for bus 1, so bus 2 cannot have the plug before. */
    @Test
    void aGapThatNobodyEndsIsNotUsed() {
        PlugIn late = SampleYard.bus(1, 1200, 1440 + 330, 40);
        YardCharging charging = SampleYard.atOnce(SampleYard.stretch(SampleYard.between(960, 1100), late, TWO),
                SampleYard.slow(1));
        assertEquals(List.of(TWO), charging.assignment().withoutPlug());
        assertTimes(at(charging, 0), 1200, 1440 + 330, false);
    }

    /** The tightest bus takes only 9 kW, which either port gives, and leaves the strong one to the other. */
    @Test
    void aBusTakesNoMorePortThanItCanUse() {
        PlugIn small = SampleYard.bus(1, FOUR_PM, 1440 + 330, 90, new BusAcceptance(0, 9, SampleYard.EVEN));
        List<PortUnit> units = new ArrayList<>(PortUnit.of(SampleYard.FAST, 1, 1));
        units.addAll(PortUnit.of(SampleYard.port("weak", true, 10, 0.9), 1, 1));
        YardCharging charging = SampleYard.atOnce(SampleYard.stretch(small, TWO), units);
        assertEquals(1, at(charging, 0).unit());
        assertEquals(0, at(charging, 1).unit());
    }

    /**
     * Bus 1 is heated from 05:00 and still holds its plug until 05:30; before that it would be a swap, after it none.
     */
    @Test
    void aHeatedBusHoldsItsPlugUntilItLeaves() {
        PlugIn heated = new PlugIn(1, "B01", FOUR_PM, 1440 + 330, 1440 + 300, 40, 40, 1, ONE.acceptance());
        PlugIn early = SampleYard.bus(2, 305, 600, 20);
        YardCharging charging = SampleYard.atOnce(SampleYard.stretch(heated, early), SampleYard.slow(1));
        assertTimes(at(charging, 0), FOUR_PM, 1440 + 305, false);
        assertTimes(at(charging, 1), 305, 600, true);
        PlugIn late = SampleYard.bus(2, 330, 600, 20);
        assertTimes(at(SampleYard.atOnce(SampleYard.stretch(heated, late), SampleYard.slow(1)), 1), 330, 600, false);
    }
}
