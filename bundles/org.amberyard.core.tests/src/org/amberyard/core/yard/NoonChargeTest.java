package org.amberyard.core.yard;

import static org.amberyard.core.yard.SampleBuses.AC;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.charging.ChargeRule;
import org.amberyard.core.charging.PortOption;
import org.amberyard.core.charging.PortUnit;
import org.amberyard.core.duty.EnergyUse;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.tariff.Tariff;
import org.junit.jupiter.api.Test;

/**
 * Two buses of 121.5 kWh usable that run 80 kWh before noon and 40 after it, a third more on the coldest day.
 * Invented.
 */
class NoonChargeTest {
    private static final Metering OWN = Metering.own(Tariff.flat("Flat", 50, 0.10, 0, 8, 0));

    private static YardInput yard(int ports, double morningKwh, ChargePolicy policy) {
        List<YardBus> buses = IntStream.range(0, 2)
                .mapToObj(place -> SampleBuses.bus(place, SampleBuses.route(18, morningKwh, 0, 40), 1, EnergyUse.ZERO))
                .toList();
        return SampleBuses.yard(buses, PortUnit.of(AC, 1, ports), ChargeRule.of(policy), true, OWN,
                BuildingLoad.constant(0, SampleBuses.STEPS), 18);
    }

    private static boolean ready(YardInput yard) {
        return YardYear.of(yard).months().stream().allMatch(m -> m.shortfalls().isEmpty());
    }

    /** The second bus cannot drive its afternoon on what it had in the morning, so a night does not help it. */
    @Test
    void whatABusNeedsByDayIsMissingWhereNoPortGivesIt() {
        for (ChargePolicy policy : List.of(ChargePolicy.AT_ONCE, ChargePolicy.SPREAD)) {
            assertFalse(ready(yard(1, 80, policy)), policy + " with one port");
            assertTrue(ready(yard(2, 80, policy)), policy + " with two ports");
        }
        YardYear atOnce = YardYear.of(yard(1, 80, ChargePolicy.AT_ONCE));
        double least = 1.33 * 120 + 0.15 * 121.5 - 121.5;
        double short1 = atOnce.months().get(0).shortfalls().stream().filter(s -> s.stretch().equals("coldest day"))
                .mapToDouble(s -> s.shortfall().shortKwh()).findFirst().orElseThrow();
        assertTrue(short1 > 30 && short1 <= least + 1e-6, "a part of noon at the port is left for it: " + short1);
        assertEquals(SampleBuses.usedKwh(atOnce.input()), AC.efficiency() * (atOnce.busKwh().get(0) + atOnce.busKwh()
                .get(1)), 1e-6);
    }

    /**
     * With 30 kWh before noon both could drive all day without a charge: what one lacks at noon waits for the night.
     */
    @Test
    void whatABusCanDriveWithoutWaits() {
        assertTrue(ready(yard(1, 30, ChargePolicy.AT_ONCE)));
        assertTrue(YardOutage.of(yard(2, 30, ChargePolicy.AT_ONCE)).get(0).outage().harmless());
    }

    @Test
    void portsAndOutagesJudgeAlike() {
        assertFalse(YardOutage.of(yard(2, 80, ChargePolicy.AT_ONCE)).get(0).outage().harmless());
        PortOffer offer = new PortOffer(List.of(new PortOption(AC, 1000)), 0);
        for (PortCurve curve : new PortQuestion(List.of(yard(1, 80, ChargePolicy.AT_ONCE)), offer, List.of())
                .answer(Progress.NONE)) {
            assertEquals(2, curve.fewest().orElseThrow().mix().ports(), curve.policy() + "");
        }
    }
}
