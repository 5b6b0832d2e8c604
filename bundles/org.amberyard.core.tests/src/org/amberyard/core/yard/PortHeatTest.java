package org.amberyard.core.yard;

import static org.amberyard.core.yard.SampleBuses.AC;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.charging.ChargeRule;
import org.amberyard.core.charging.PortUnit;
import org.amberyard.core.depot.Port;
import org.amberyard.core.duty.Climate;
import org.amberyard.core.duty.DayBlock;
import org.amberyard.core.duty.EnergyCauses;
import org.amberyard.core.duty.EnergyUse;
import org.amberyard.core.duty.RouteUse;
import org.amberyard.core.tariff.Tariff;
import org.junit.jupiter.api.Test;

/** Buses that are heated for half an hour before each run. All data invented. */
class PortHeatTest {
    private static final Metering OWN = Metering.own(Tariff.flat("Flat", 50, 0.10, 0, 8, 0));
    private static final double[] DEPARTURES = {390, 700, 870};

    private static RouteUse route(double preheatKw, double... runsKwh) {
        List<DayBlock.Leg> legs = new ArrayList<>();
        for (int run = 0; run < runsKwh.length; run++) {
            EnergyUse use = new EnergyUse(30, 1, runsKwh[run], 0, EnergyCauses.ZERO, preheatKw / 2, 0, 0, 0);
            legs.add(new DayBlock.Leg("Run " + run, DEPARTURES[run], DEPARTURES[run] + 65, true, 12, use, 12,
                    preheatKw));
        }
        DayBlock day = new DayBlock(legs, 12);
        EnergyUse month = day.uses().stream().reduce(EnergyUse.ZERO, EnergyUse::plus).times(18);
        List<Integer> months = IntStream.range(0, Climate.MONTHS).filter(m -> m != SampleBuses.JULY).boxed().toList();
        List<RouteUse.DesignDay> design = new ArrayList<>();
        months.forEach(m -> design.addAll(List.of(new RouteUse.DesignDay(m, false, true, day, day),
                new RouteUse.DesignDay(m, false, false, day, day))));
        return new RouteUse(month.times(months.size()), design,
                months.stream().map(m -> new RouteUse.NormalDay(m, false, 18, day, month)).toList());
    }

    private static YardDetail detail(int buses, List<PortUnit> ports, ChargePolicy policy, boolean midday,
            RouteUse route) {
        List<YardBus> standing = IntStream.range(0, buses)
                .mapToObj(place -> SampleBuses.bus(place, route, 1, EnergyUse.ZERO)).toList();
        return YardDetail.of(SampleBuses.yard(standing, ports, ChargeRule.of(policy), midday, OWN,
                BuildingLoad.constant(0, SampleBuses.STEPS), 18));
    }

    private static double mostKw(YardDetail detail) {
        return detail.loads().stream().flatMap(m -> m.stretches().stream())
                .flatMapToDouble(s -> Arrays.stream(s.busKw(0))).max()
                .orElseThrow();
    }

    private static void assertAllUsed(YardDetail detail) {
        double charged = detail.year().busKwh().stream().mapToDouble(Double::doubleValue).sum()
                * detail.year().input().ports().get(0).port().efficiency();
        assertEquals(SampleBuses.usedKwh(detail.year().input()), charged, 1e-6);
    }

    @Test
    void heatAndChargeNeverExceedThePort() {
        for (double preheatKw : new double[] {10, 25}) {
            for (ChargePolicy policy : List.of(ChargePolicy.AT_ONCE, ChargePolicy.SPREAD, ChargePolicy.LEAST_COST)) {
                YardDetail detail = detail(1, PortUnit.of(AC, 1, 1), policy, true, route(preheatKw, 80, 35, 60));
                assertTrue(mostKw(detail) <= 19.2 + 1e-6, policy + " heated with " + preheatKw + ": " + mostKw(detail));
                assertAllUsed(detail);
            }
        }
    }

    /** A night that is too short for a slow port to be done before heat begins. */
    @Test
    void aSlowPortChargesUntilTheDeparture() {
        Port slow = new Port("Slow", false, 9, 0.88, 0, 0, 0, 10, 20, 0);
        YardDetail detail = detail(1, PortUnit.of(slow, 1, 1), ChargePolicy.SPREAD, false, route(10, 60, 0, 55));
        assertTrue(mostKw(detail) <= 9 + 1e-6, "on 9 kW: " + mostKw(detail));
        assertAllUsed(detail);
    }

    /** A pack that is held at its temperature through a stand of hours draws through all of it, not in its last minutes. */
    @Test
    void holdingThePackIsSpreadOverTheStand() {
        double heldKwh = 10;
        double preheatKw = 4;
        EnergyUse none = new EnergyUse(30, 1, 20, 0, EnergyCauses.ZERO, 0, 0, 0, 0);
        EnergyUse afterStand = new EnergyUse(30, 1, 20, 0, EnergyCauses.ZERO, heldKwh + preheatKw / 2, 0, 0, 0);
        DayBlock day = new DayBlock(List.of(new DayBlock.Leg("Morning", 390, 480, true, -10, none, 12, 0),
                new DayBlock.Leg("Afternoon", 780, 870, true, -10, afterStand, 12, preheatKw)), 12);
        YardHeat heat = YardHeat.of(day, 1, 870, 1830, 0, 19.2);
        assertEquals(List.of(new BusNeed.Heat(750, 780, preheatKw)), heat.beforeDepartures());
        assertEquals(List.of(new BusNeed.Heat(480, 780, heldKwh / 5)), heat.standing());
        assertEquals(heldKwh / 5, heat.standingKw(480, 780));
        assertEquals(0, heat.standingKw(870, 1830));
        assertEquals(heldKwh + preheatKw / 2, heat.kwh(), 1e-12);
    }

    /** A port of 6.6 kW has no power for 25 kW of heat and a pack that takes 8 kWh more: it gives what it can, never before the bus is there. */
    @Test
    void whatThePortCannotGiveComesFromTheBattery() {
        EnergyUse run = new EnergyUse(30, 1, 20, 0, EnergyCauses.ZERO, 12.5 + 8, 0, 0, 0);
        DayBlock day = new DayBlock(List.of(new DayBlock.Leg("Morning", 390, 480, true, -10, run, 12, 25),
                new DayBlock.Leg("Afternoon", 540, 630, true, -10, run, 12, 25)), 12);
        YardHeat heat = YardHeat.of(day, 1, 630, 1830, 0, 6.6);
        assertEquals(new BusNeed.Heat(480, 540, 6.6), heat.standing().get(1), "all of the hour between the runs");
        assertEquals(List.of(new BusNeed.Heat(1800, 1830, 6.6 - 8 / 20.0)), heat.beforeDepartures(), "in the morning");
        assertEquals(2 * 20.5, heat.kwh() + heat.lackingKwh(), 1e-12);
        YardDetail detail = detail(1, PortUnit.of(new Port("Slow", false, 6.6, 0.88, 0, 0, 0, 10, 20, 0), 1, 1), ChargePolicy.AT_ONCE, true,
                route(25, 30, 10, 20));
        assertTrue(mostKw(detail) <= 6.6 + 1e-6, "on 6.6 kW: " + mostKw(detail));
        assertEquals(0, detail.year().totalMissingKwh(), 1e-9);
        assertAllUsed(detail);
    }

    /** Eight buses at two plugs draw no more than two plugs give, heat or not. */
    @Test
    void busesWithoutAPlugAreNotHeatedThroughOne() {
        YardDetail detail = detail(8, PortUnit.of(AC, 1, 2), ChargePolicy.SPREAD, false, route(8, 30, 0, 30));
        assertTrue(detail.year().yardPeakKw() <= 2 * 19.2 + detail.year().input().standbyKw() + 1e-6,
                "on 38.4 kW: " + detail.year().yardPeakKw());
        assertAllUsed(detail);
    }
}
