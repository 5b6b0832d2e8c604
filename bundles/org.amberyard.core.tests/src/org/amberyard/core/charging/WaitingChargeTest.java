package org.amberyard.core.charging;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.amberyard.core.depot.Port;
import org.junit.jupiter.api.Test;

/** What a bus cannot take between its runs and may take in the night; ports of 10 kW into the battery, counted by hand. */
class WaitingChargeTest {
    private static final BusAcceptance ANY = new BusAcceptance(100, 100, SampleYard.EVEN);

    /** A stay of a bus that stores some energy and could not go on without some of it. */
    private static PlugIn stay(int bus, double fromHour, double toHour, double kwh, double leastKwh) {
        return new PlugIn(bus, "B0" + bus, 60 * fromHour, 60 * toHour, 60 * toHour, kwh, leastKwh, 1, ANY);
    }

    private static double storedKwh(YardCharging charging, int place) {
        double sum = 0;
        for (double kw : charging.schedule().meterKw()[place]) {
            sum += kw;
        }
        return sum * 0.25 * SampleYard.SLOW.efficiency();
    }

    private static YardCharging waiting(ChargePolicy policy, PlugIn... stays) {
        return YardCharging.waiting(SampleYard.stretch(stays), SampleYard.slow(1), ChargeRule.of(policy));
    }

    /** At noon an hour gives 10 of 20 kWh; the runs of the afternoon take 5, so the other 10 wait. */
    @Test
    void whatTheRunsDoNotTakeWaitsForTheNight() {
        YardCharging charging = waiting(ChargePolicy.AT_ONCE, stay(1, 12, 13, 20, 5), stay(1, 16, 22, 30, 30));
        assertTrue(charging.served());
        assertEquals(10, storedKwh(charging, 0), 1e-9);
        assertEquals(40, storedKwh(charging, 1), 1e-9);
    }

    /** The afternoon takes 15 of the 20 kWh: 5 are missing for it, and only the 5 that may wait come in the night. */
    @Test
    void whatTheRunsTakeIsMissing() {
        YardCharging charging = waiting(ChargePolicy.AT_ONCE, stay(1, 12, 13, 20, 15), stay(1, 16, 22, 30, 30));
        assertFalse(charging.served());
        assertEquals(5, charging.schedule().shortKwh(), 1e-9);
        assertEquals(10, storedKwh(charging, 0), 1e-9);
        assertEquals(35, storedKwh(charging, 1), 1e-9);
    }

    /** 5 kWh lack after the first hour and 10 after the second, together no more than the 25 that may; another bus is not charged for them. */
    @Test
    void whatIsMissingOfSeveralStaysAddsUp() {
        YardCharging charging = waiting(ChargePolicy.AT_ONCE, stay(1, 9, 10, 15, 5), stay(1, 12, 13, 20, 5), stay(1, 16, 20, 20, 20),
                stay(2, 20, 23, 7, 7));
        assertTrue(charging.served());
        assertEquals(List.of(10.0, 10.0, 35.0, 7.0), List.of(rounded(charging, 0), rounded(charging, 1), rounded(charging, 2), rounded(charging, 3)));
    }

    private static double rounded(YardCharging charging, int place) {
        return Math.rint(storedKwh(charging, place) * 1e6) / 1e6;
    }

    /** Of 25 kWh that may lack by the second departure 10 may by the first; 20 are short there, so 10 are missing and are not missed again. */
    @Test
    void whatIsMissedOnceIsNotMissedAgain() {
        YardCharging charging = waiting(ChargePolicy.AT_ONCE, stay(1, 9, 10, 30, 20), stay(1, 12, 14, 20, 5), stay(1, 16, 23, 20, 20));
        assertEquals(10, charging.schedule().shortKwh(), 1e-9);
        assertEquals(30, storedKwh(charging, 2), 1e-9, "20 and the 10 that wait");
    }

    @Test
    void aManagedPolicyLetsNothingWait() {
        YardCharging charging = waiting(ChargePolicy.LEAST_COST, stay(1, 12, 13, 20, 5), stay(1, 16, 22, 30, 30));
        assertEquals(10, charging.schedule().shortKwh(), 1e-9);
    }

    /** A bus that takes direct current alone comes before one that takes either and needs more. */
    @Test
    void whoFitsFewPortsChoosesFirst() {
        Port direct = SampleYard.port("DC", true, 12.5, 0.8);
        List<PortUnit> units = List.of(new PortUnit(direct, 1), new PortUnit(SampleYard.SLOW, 1));
        PlugIn either = SampleYard.bus(1, 960, 1440 + 360, 90);
        PlugIn directOnly = SampleYard.bus(2, 960, 1440 + 360, 60, new BusAcceptance(0, 100, SampleYard.EVEN));
        YardCharging charging = SampleYard.atOnce(SampleYard.stretch(either, directOnly), units);
        assertTrue(charging.served());
        assertEquals(0, charging.assignment().swaps());
        assertEquals(List.of(1, 0), charging.assignment().plugged().stream().map(Plugged::unit).toList());
    }

    /** One port for 60, 120 and 180 minutes of charging within 840: 140, then 120 of 300 of what is left, 280, then the rest. */
    @Test
    void threeBusesShareThePlugByTheirNeed() {
        YardCharging charging = SampleYard.spread(SampleYard.stretch(SampleYard.bus(1, 960, 1440 + 360, 10),
                SampleYard.bus(2, 960, 1440 + 360, 20), SampleYard.bus(3, 960, 1440 + 360, 30)), SampleYard.slow(1));
        assertEquals(List.of(960.0, 1100.0, 1380.0), charging.assignment().plugged().stream().map(Plugged::fromMin).toList());
        assertTrue(charging.served());
    }
}
