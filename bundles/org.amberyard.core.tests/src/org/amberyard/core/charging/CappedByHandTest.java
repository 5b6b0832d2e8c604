package org.amberyard.core.charging;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Charging under a cap at ports of 12.5 kW at the meter and 10 kW into the battery, worked by hand. */
class CappedByHandTest {

    private static YardCharging capped(double capKw, List<PortUnit> units, PlugIn... buses) {
        return YardCharging.of(SampleYard.stretch(buses), units, ChargeRule.capped(capKw));
    }

    private static double[] part(YardCharging charging, int bus, int fromStep, int toStep) {
        return Arrays.copyOfRange(charging.schedule().meterKw()[bus], fromStep, toStep);
    }

    /**
     * 20 kW for two buses of 12.5: bus 2 leaves first and gets all it can take, 12.5 kW for an hour, 10 kWh; bus 1 the 7.5 kW that are left, 6 kWh in
     * the hour, then 12.5 kW for the 4 kWh it still lacks, 24 minutes.
     */
    @Test
    void whoLeavesFirstIsChargedFirst() {
        YardCharging charging = capped(20, SampleYard.slow(2), SampleYard.bus(1, 0, 600, 10), SampleYard.bus(2, 0, 300, 10));
        assertArrayEquals(new double[] {12.5, 12.5, 12.5, 12.5, 0, 0}, part(charging, 1, 0, 6), 1e-9);
        assertArrayEquals(new double[] {7.5, 7.5, 7.5, 7.5, 12.5, 12.5 * 9 / 15, 0}, part(charging, 0, 0, 7), 1e-9);
        assertTrue(charging.served());
    }

    /** Under 10 kW bus 2, which leaves after an hour, gets all of it, 8 of its 10 kWh at 80 %; 2 kWh are missing, told by its name. */
    @Test
    void aMissedDepartureIsNamed() {
        YardCharging charging = capped(10, SampleYard.slow(2), SampleYard.bus(1, 0, 600, 10), SampleYard.bus(2, 0, 60, 10));
        assertArrayEquals(new double[] {10, 10, 10, 10}, part(charging, 1, 0, 4), 1e-9);
        assertArrayEquals(new double[] {0, 0, 0, 0, 10}, part(charging, 0, 0, 5), 1e-9);
        assertEquals(List.of("B02"), charging.schedule().shortfalls().stream().map(s -> s.plugIn().label()).toList());
        assertEquals(2, charging.schedule().shortfalls().get(0).shortKwh(), 1e-9);
    }

    /** Where the cap gives all ports what they can, charging is as at once. */
    @Test
    void aHighCapIsAsAtOnce() {
        PlugIn[] buses = {SampleYard.bus(1, 0, 600, 37), SampleYard.bus(2, 100, 900, 21), SampleYard.bus(3, 700, 1440 + 80, 90)};
        YardCharging atOnce = SampleYard.atOnce(SampleYard.stretch(buses), SampleYard.slow(3));
        YardCharging capped = capped(3 * 12.5, SampleYard.slow(3), buses);
        for (int bus = 0; bus < buses.length; bus++) {
            assertArrayEquals(atOnce.schedule().meterKw()[bus], capped.schedule().meterKw()[bus], 1e-9);
        }
    }

    /** Buses that stand over midnight share the cap with those of the morning; it holds in every step. */
    @Test
    void theCapHoldsOverTheEndOfTheDay() {
        YardCharging charging = capped(15, SampleYard.slow(3), SampleYard.bus(1, 1020, 1440 + 360, 60), SampleYard.bus(2, 1200, 1440 + 420, 60),
                SampleYard.bus(3, 30, 700, 30));
        double most = Arrays.stream(charging.schedule().totalKw()).max().orElseThrow();
        assertEquals(15, most, 1e-9);
        assertTrue(charging.served());
    }

    /** Two plugs of one cabinet of 60 kW: the cap of 100 leaves the first to leave all that the cabinet gives. */
    @Test
    void thePowerOfAPortLimitsItsPlugs() {
        YardCharging charging = capped(100, PortUnit.of(SampleYard.FAST, 2, 1), SampleYard.bus(1, 0, 600, 27), SampleYard.bus(2, 0, 300, 27));
        assertArrayEquals(new double[] {60, 60, 0}, part(charging, 1, 0, 3), 1e-9);
        assertArrayEquals(new double[] {0, 0, 60, 60, 0}, part(charging, 0, 0, 5), 1e-9);
    }

    @Test
    void aCapMustBeAboveZero() {
        assertThrows(IllegalArgumentException.class, () -> ChargeRule.capped(0));
        assertTrue(ChargeRule.capped(50).comparable().contains(ChargePolicy.CAPPED));
        assertTrue(!ChargeRule.of(ChargePolicy.SPREAD).comparable().contains(ChargePolicy.CAPPED));
    }
}
