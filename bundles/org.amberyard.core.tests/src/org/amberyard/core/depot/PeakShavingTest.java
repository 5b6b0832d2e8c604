package org.amberyard.core.depot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class PeakShavingTest {
    private static final double ONE_WAY = Math.sqrt(PeakShaving.ROUND_TRIP);

    /** Two hours of 30 kW above the limit take 60 kWh out, and what the way out loses. */
    @Test
    void energyIsTheAreaAboveTheLimit() {
        PeakShaving battery = PeakShaving.of(new double[] {50, 130, 130, 50, 50, 50}, 1, 100).orElseThrow();
        assertEquals(30, battery.kw(), 1e-12);
        assertEquals(60 / ONE_WAY, battery.kwh(), 1e-9);
    }

    @Test
    void twoPeaksThatFollowCloselyAddUp() {
        PeakShaving battery = PeakShaving.of(new double[] {140, 90, 140, 20, 20, 20, 20}, 1, 100).orElseThrow();
        assertEquals(80 / ONE_WAY - 10 * ONE_WAY, battery.kwh(), 1e-9);
    }

    /** Energy is power over time: in quarter hours 40 kW above the limit are 10 kWh each, and 10 kW below it 2.5 kWh back. */
    @Test
    void stepsCountByTheirLength() {
        PeakShaving battery = PeakShaving.of(new double[] {140, 90, 140, 20, 20, 20, 20}, 0.25, 100).orElseThrow();
        assertEquals(40, battery.kw(), 1e-12);
        assertEquals(20 / ONE_WAY - 2.5 * ONE_WAY, battery.kwh(), 1e-9);
    }

    @Test
    void withoutRoomToChargeNoBatteryHelps() {
        assertEquals(Optional.empty(), PeakShaving.of(new double[] {130, 95, 95}, 1, 100));
        assertEquals(Optional.of(new PeakShaving(0, 0)), PeakShaving.of(new double[] {100, 95, 95}, 1, 100));
    }

    @Property
    void aLowerLimitNeverTakesASmallerBattery(@ForAll @Size(12) double[] loads, @ForAll @DoubleRange(min = 60, max = 100) double limit) {
        double[] kw = new double[loads.length];
        for (int step = 0; step < kw.length; step++) {
            kw[step] = Double.isFinite(loads[step]) ? Math.abs(loads[step]) % 120 : 0;
        }
        Optional<PeakShaving> low = PeakShaving.of(kw, 0.25, limit - 5);
        Optional<PeakShaving> high = PeakShaving.of(kw, 0.25, limit);
        assertTrue(low.isEmpty() || high.isPresent());
        if (low.isPresent()) {
            assertTrue(low.get().kw() >= high.get().kw() - 1e-9 && low.get().kwh() >= high.get().kwh() - 1e-9);
        }
    }
}
