package org.amberyard.core.charging;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** One bus at a port of 12.5 kW at the meter and 10 into the battery, minute by minute. */
class PoliciesByHandTest {
    private static final int NINE_PM = 21 * 60;

    /** Stands from 21:10 to 06:05 and needs 25 kWh: 150 minutes, to 23:40. */
    private static final PlugIn NIGHT = SampleYard.bus(7, NINE_PM + 10, 1440 + 365, 25);

    private static double[] kw(YardCharging charging) {
        return charging.schedule().meterKw()[0];
    }

    @Test
    void atOnce() {
        double[] kw = kw(SampleYard.atOnce(SampleYard.stretch(NIGHT), SampleYard.slow(1)));
        assertEquals(12.5 * 5 / 15, kw[84], 1e-9, "from 21:10");
        assertEquals(12.5, kw[85], 1e-9);
        assertEquals(12.5, kw[93], 1e-9);
        assertEquals(12.5 * 10 / 15, kw[94], 1e-9, "to 23:40");
        assertEquals(0, kw[95], 0);
    }

    @Test
    void atASetTimeOverMidnight() {
        double[] kw = kw(YardCharging.of(SampleYard.stretch(NIGHT), SampleYard.slow(1), ChargeRule.setTime(40)));
        assertEquals(0, kw[1], 0);
        assertEquals(12.5 * 5 / 15, kw[2], 1e-9, "from 00:40");
        assertEquals(12.5 * 10 / 15, kw[12], 1e-9, "to 03:10");
    }

    @Test
    void betweenRunsAtOnceAlthoughASetTimeHolds() {
        PlugIn midday = SampleYard.bus(7, 9 * 60, 14 * 60, 10);
        double[] kw = kw(YardCharging.of(SampleYard.stretch(midday), SampleYard.slow(1), ChargeRule.setTime(22 * 60)));
        assertEquals(12.5, kw[36], 1e-9);
        assertEquals(12.5, kw[39], 1e-9);
        assertEquals(0, kw[40], 0);
    }

    @Test
    void spreadIsEvenToTheDeparture() {
        double[] kw = kw(SampleYard.spread(SampleYard.stretch(NIGHT), SampleYard.slow(1)));
        double even = 25 / (535 / 60.0) / 0.8;
        assertEquals(even * 5 / 15, kw[84], 1e-9);
        assertEquals(even, kw[95], 1e-9);
        assertEquals(even, kw[0], 1e-9);
        assertEquals(even * 5 / 15, kw[24], 1e-9);
        assertEquals(0, kw[25], 0);
    }

    /** 100 kWh in 535 minutes at 10 kW: 10.833 kWh or 65 minutes short. */
    @Test
    void namesWhatIsMissing() {
        PlugIn empty = NIGHT.withKwh(100);
        for (YardCharging charging : new YardCharging[] {SampleYard.atOnce(SampleYard.stretch(empty), SampleYard.slow(1)),
            SampleYard.spread(SampleYard.stretch(empty), SampleYard.slow(1))}) {
            ChargeShortfall missing = charging.schedule().shortfalls().get(0);
            assertEquals(100 - 10 * 535 / 60.0, missing.shortKwh(), 1e-9);
            assertEquals(65, missing.moreMin(), 1e-9);
            assertEquals("B07 misses 06:05 by 10.8 kWh; 65 min more at its port would do", missing.words());
        }
    }

    @Test
    void aBusWithoutDirectCurrentDoesNotUseIt() {
        PlugIn alternating = SampleYard.bus(7, NINE_PM, 1440 + 360, 25, new BusAcceptance(19.2, 0, SampleYard.EVEN));
        YardCharging charging = SampleYard.atOnce(SampleYard.stretch(alternating), PortUnit.of(SampleYard.FAST, 1, 2));
        assertEquals(0, charging.schedule().meterKwh(0), 0);
        assertEquals("B07 misses 06:00 by 25.0 kWh; no port charges it", charging.schedule().shortfalls().get(0).words());
    }

    /** 45 minutes at 54 kW to 90 %, then along the taper: closed form of the acceptance's fall. */
    @Test
    void taper() {
        PlugIn bus = SampleYard.bus(7, 0, 600, 90, new BusAcceptance(0, 100, SampleYard.TAPERING));
        YardCharging charging = SampleYard.atOnce(SampleYard.stretch(bus), PortUnit.of(SampleYard.FAST, 1, 1));
        double taperFrom = 1 - 0.1 * (54 - 5) / 95.0;
        double hours = taperFrom * 90 / 54 + 90 * 0.1 / 95 * Math.log(54 / 5.0);
        double[] kw = kw(charging);
        assertEquals(60, kw[0], 1e-9);
        assertTrue(charging.served());
        assertEquals(100, charging.schedule().meterKwh(0), 1e-9);
        int last = (int) (hours * 4);
        assertTrue(kw[last] > 0 && kw[last] < 60);
        assertEquals(0, kw[last + 1], 0);
    }

    @Test
    void refusesAnImpossibleStay() {
        IllegalArgumentException thrown = assertThrows(IllegalArgumentException.class,
                () -> SampleYard.bus(3, 100, 90, 5));
        assertTrue(thrown.getMessage().contains("B03") && thrown.getMessage().contains("100.0 to 90.0"));
        assertThrows(IllegalArgumentException.class, () -> ChargeRule.of(ChargePolicy.SET_TIME));
    }
}
