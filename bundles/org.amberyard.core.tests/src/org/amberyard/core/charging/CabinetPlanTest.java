package org.amberyard.core.charging;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Plans for two buses at a cabinet of 60 kW at the meter, 54 kW into the battery, with two plugs; invented packs. */
class CabinetPlanTest {
    private static final List<PortUnit> CABINET = PortUnit.of(SampleYard.FAST, 2, 1);

    private static YardCharging leastCost(PlugIn... buses) {
        return YardCharging.of(SampleYard.stretch(buses), CABINET, ChargeRule.of(ChargePolicy.LEAST_COST));
    }

    private static PlugIn bus(int number, double batteryKwh, double takesKw) {
        return SampleYard.bus(number, 0, 300, batteryKwh, new BusAcceptance(0, takesKw, SampleYard.TAPERING));
    }

    private static boolean shares(double oneKw, double otherKw) {
        YardCharging charging = leastCost(bus(1, 20, oneKw), bus(2, 20, otherKw));
        return PolicyRun.sharesPower(CABINET.get(0), new ScheduleRun(charging.stretch(), CABINET, charging.assignment()).at(0));
    }

    /** 27 kW into either battery are just the 60 kW of the cabinet. */
    @Test
    void busesThatTogetherTakeNoMoreThanTheCabinetGivesShareNothing() {
        assertFalse(shares(27, 27));
        assertTrue(shares(27, 27.5));
        assertTrue(shares(54, 54));
    }

    /**
     * The plan brings both in the last two hours, bus 1 within the hour in which its pack takes less and less. It is charged
     * earlier than planned, but not in the power that the plan gives bus 2.
     */
    @Test
    void whatTheTaperMovesKeepsToThePowerOfTheCabinet() {
        YardCharging charging = leastCost(bus(1, 45, 54), bus(2, 45, 54));
        double[][] plan = new double[2][SampleYard.DAY.steps()];
        Arrays.fill(plan[1], 12, 16, 50);
        Arrays.fill(plan[0], 16, 20, 50);
        ChargeSchedule schedule = new LeastCostSessions(charging).schedule(plan, SpareKw.unlimited(SampleYard.DAY.steps()));
        assertTrue(schedule.movedKwh() > 1, "the pack could not follow the plan");
        for (int step = 0; step < SampleYard.DAY.steps(); step++) {
            assertTrue(schedule.totalKw()[step] <= 60 + 1e-9, "step " + step);
        }
        assertEquals(50, Arrays.stream(schedule.meterKw()[0]).sum() / 4, 1e-3);
        assertEquals(50, Arrays.stream(schedule.meterKw()[1]).sum() / 4, 1e-3);
    }
}
