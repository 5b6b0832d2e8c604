package org.amberyard.core.charging;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Two buses that need 60 kWh in the nine hours of the night each, and one of them 20 in the two hours of midday. */
class PortOutageTest {
    private static final PlugIn ONE = SampleYard.bus(1, 1260, 1440 + 360, 60);
    private static final PlugIn TWO = SampleYard.bus(2, 1260, 1440 + 360, 60);
    private static final PlugIn NOON = SampleYard.bus(1, 600, 720, 20);

    private static List<PortOutage> week(List<PortUnit> units, SwapHours hours, PlugIn... plugIns) {
        return PortOutage.of(SampleYard.stretch(hours, plugIns), units, ChargeRule.of(ChargePolicy.AT_ONCE), 5);
    }

    /** With one port left bus 1 is full at 03:00 and bus 2 gets three hours, 30 of 60 kWh; what it lacks adds up. */
    @Test
    void whatIsMissingAddsUpFromDayToDay() {
        List<PortOutage> outages = week(SampleYard.slow(2), SwapHours.always(1440), ONE, TWO);
        assertEquals(1, outages.size(), "one type of port");
        PortOutage outage = outages.get(0);
        assertFalse(outage.harmless());
        for (int day = 0; day < 5; day++) {
            ChargeShortfall missing = outage.days().get(day).get(0);
            assertEquals("B02", missing.plugIn().label());
            assertEquals(30 * (day + 1), missing.shortKwh(), 1e-9);
        }
        assertEquals(150, outage.worstKwh(), 1e-9);
    }

    /** Without a third port, a fast one that is left charges both. */
    @Test
    void eachTypeOfPortInTurn() {
        List<PortUnit> units = new ArrayList<>(SampleYard.slow(1));
        units.addAll(PortUnit.of(SampleYard.FAST, 1, 1));
        List<PortOutage> outages = week(units, SwapHours.always(1440), ONE, TWO);
        assertEquals(SampleYard.SLOW, outages.get(0).port());
        assertTrue(outages.get(0).harmless());
        assertEquals(SampleYard.FAST, outages.get(1).port());
        assertEquals(30, outages.get(1).days().get(0).get(0).shortKwh(), 1e-9);
    }

    /** With no port left bus 1 lacks 20 kWh at midday, which the night would have to give too: 80, then 100 the next noon. */
    @Test
    void aMiddayShortfallIsTheNightsBurden() {
        PortOutage outage = week(SampleYard.slow(1), SwapHours.always(1440), NOON, ONE).get(0);
        assertEquals(20, outage.days().get(0).get(0).shortKwh(), 1e-9);
        assertEquals(80, outage.days().get(0).get(1).shortKwh(), 1e-9);
        assertEquals(100, outage.days().get(1).get(0).shortKwh(), 1e-9);
        assertEquals(400, outage.worstKwh(), 1e-9);
    }
}
