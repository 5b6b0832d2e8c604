package org.amberyard.core.charging;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.amberyard.core.battery.TaperCurve;
import org.junit.jupiter.api.Test;

/** Yards of two shifts of half a day and more, so that some bus stands at every moment of the day; power shared under a cap and by cabinets. */
class SharedTurnsPropertyTest {
    private static final double EFFICIENCY = 0.8;
    private static final ChargeRule AT_ONCE = ChargeRule.of(ChargePolicy.AT_ONCE);

    /** Buses of the night and of the day in turn, which stand for 12 to 23 hours. */
    private static YardStretch yard(Random random, double mostKwh) {
        List<PlugIn> plugIns = new ArrayList<>();
        int buses = 2 + random.nextInt(6);
        for (int bus = 1; bus <= buses; bus++) {
            double fromMin = (bus % 2 == 0 ? 960 : 300) + random.nextInt(120);
            double stayMin = 840 + random.nextInt(540);
            BusAcceptance acceptance = new BusAcceptance(100, 100,
                    random.nextBoolean() ? SampleYard.EVEN : new TaperCurve(200, 6, 0.85, 130));
            plugIns.add(SampleYard.bus(bus, fromMin, fromMin + stayMin, 5 + random.nextInt((int) mostKwh), acceptance));
        }
        return SampleYard.stretch(plugIns.toArray(PlugIn[]::new));
    }

    private static double most(ChargeSchedule schedule) {
        return Arrays.stream(schedule.totalKw()).max().orElseThrow();
    }

    private static double needKwh(YardStretch yard) {
        return yard.plugIns().stream().mapToDouble(PlugIn::batteryKwh).sum();
    }

    private static void energyIsKept(YardCharging charging, double efficiency) {
        double metered = Arrays.stream(charging.schedule().totalKw()).sum() * SampleYard.DAY.stepHours();
        assertEquals(needKwh(charging.stretch()), metered * efficiency + charging.schedule().shortKwh(), 1e-7);
    }

    /** No step draws more than the cap; where the day brings less than the need, the rest is told as missing. */
    @Property(tries = 400)
    void theCapHoldsWhereSomeBusAlwaysStands(@ForAll @IntRange(min = 0) int seed) {
        Random random = new Random(seed);
        YardStretch yard = yard(random, 120);
        double capKw = 6 + random.nextInt(40);
        YardCharging charging = YardCharging.of(yard, SampleYard.slow(8), ChargeRule.capped(capKw));
        assertTrue(most(charging.schedule()) <= capKw + 1e-9, () -> most(charging.schedule()) + " kW of " + capKw);
        energyIsKept(charging, EFFICIENCY);
        assertTrue(charging.schedule().shortKwh() >= needKwh(yard) - 24 * capKw * EFFICIENCY - 1e-7);
    }

    /** A cabinet with a plug for each bus gives no more than its power at any step. */
    @Property(tries = 400)
    void aCabinetKeepsToItsPower(@ForAll @IntRange(min = 0) int seed) {
        Random random = new Random(seed);
        YardStretch yard = yard(random, 120);
        PortUnit cabinet = new PortUnit(SampleYard.port("cabinet", true, 10 + random.nextInt(40), EFFICIENCY), 8);
        YardCharging charging = YardCharging.of(yard, List.of(cabinet), AT_ONCE);
        assertTrue(most(charging.schedule()) <= cabinet.port().powerKw() + 1e-9);
        energyIsKept(charging, EFFICIENCY);
    }

    /** The day brings 360 kWh at 15 kW, the buses need 269 / 0.8 = 336.25: all are served, and no step draws more than the 15 kW. */
    @Test
    void aServedYardKeepsToItsCap() {
        YardCharging charging = halfDays(15);
        assertEquals(15, most(charging.schedule()), 1e-9);
        assertTrue(charging.served());
        energyIsKept(charging, EFFICIENCY);
    }

    /** At 12.5 kW the day brings 300 kWh at the meter, 240 in the batteries; of 269 at least 29 are missing. */
    @Test
    void aDayThatBringsLessThanTheNeedTellsTheRest() {
        YardCharging charging = halfDays(12.5);
        assertFalse(charging.served());
        assertTrue(charging.schedule().shortKwh() >= 29 - 1e-9);
        assertTrue(most(charging.schedule()) <= 12.5 + 1e-9);
    }

    private static YardCharging halfDays(double capKw) {
        YardStretch yard = SampleYard.stretch(SampleYard.bus(1, 1028, 2295, 69), SampleYard.bus(2, 553, 1816, 103),
                SampleYard.bus(3, 1026, 2286, 56), SampleYard.bus(4, 1035, 2278, 41));
        return YardCharging.of(yard, SampleYard.slow(4), ChargeRule.capped(capKw));
    }

    /**
     * Cabinet of 20 kW, 16 into the batteries; bus 1 from noon to 10:00, bus 2 from 6:00 to 18:00, 96 kWh each. Bus 1 alone at noon shares with bus 2,
     * which has 6 h to itself by then and is full; so both are charged alone, from 12:00 and from 6:00 for 6 h.
     */
    @Test
    void busesOfTurnsThatFollowAreChargedOnce() {
        PortUnit cabinet = new PortUnit(SampleYard.port("cabinet", true, 20, EFFICIENCY), 2);
        YardCharging charging = YardCharging.of(SampleYard.stretch(SampleYard.bus(1, 720, 2040, 96), SampleYard.bus(2, 360, 1080, 96)),
                List.of(cabinet), AT_ONCE);
        double[] expected = new double[96];
        Arrays.fill(expected, 48, 72, 20);
        assertArrayEquals(expected, charging.schedule().meterKw()[0], 1e-9);
        assertTrue(charging.served());
    }
}
