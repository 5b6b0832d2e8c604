package org.amberyard.core.yard;

import static org.amberyard.core.yard.SampleBuses.AC;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.charging.ChargeRule;
import org.amberyard.core.charging.PortUnit;
import org.amberyard.core.depot.Port;
import org.amberyard.core.duty.EnergyUse;
import org.amberyard.core.tariff.BillIndex;
import org.amberyard.core.tariff.BillParts;
import org.amberyard.core.tariff.Tariff;
import org.junit.jupiter.api.Test;

/** A year of two buses behind the meter of a building of 40 kW: 0.12 per kWh, 8 per kW, 50 a month. All data invented. */
class YardYearTest {
    private static final double CENT = 0.005;
    private static final double BUILDING_KW = 40;
    private static final Tariff FLAT = Tariff.flat("Flat", 50, 0.12, 0, 8, 0);

    private static YardInput yard(boolean shared, int ports) {
        List<YardBus> buses = List.of(SampleBuses.bus(3, SampleBuses.route(18, 30, 0, 25), 1, EnergyUse.ZERO),
                SampleBuses.bus(5, SampleBuses.route(18, 20, 0, 15), 1, EnergyUse.ZERO));
        return SampleBuses.yard(buses, PortUnit.of(AC, 1, ports), ChargeRule.of(ChargePolicy.AT_ONCE), false,
                new Metering(FLAT, shared, List.of(), OptionalInt.empty()), BuildingLoad.constant(BUILDING_KW, SampleBuses.STEPS), 18);
    }

    private final YardYear own = YardYear.of(yard(false, 2));
    private final YardYear shared = YardYear.of(yard(true, 2));

    @Test
    void onAMeterOfItsOwnChargingPaysAllOfTheBill() {
        BillParts parts = own.parts();
        assertEquals(0.12 * own.yardKwh(), parts.energy(), CENT);
        assertEquals(8 * own.months().stream().mapToDouble(YardYear.Month::yardPeakKw).sum(), parts.demand(), CENT);
        assertEquals(12 * 50, parts.fixed(), CENT);
        assertTrue(own.withoutCharging().isEmpty());
    }

    /** Behind the building's meter it pays what the bill is above that of the building alone: no monthly charge, and the rise of the peaks. */
    @Test
    void behindTheBuildingsMeterChargingPaysTheDifference() {
        BillParts parts = shared.parts();
        assertEquals(0.12 * shared.yardKwh(), parts.energy(), CENT);
        assertEquals(8 * shared.months().stream().mapToDouble(m -> m.servicePeakKw() - BUILDING_KW).sum(), parts.demand(), CENT);
        assertEquals(0, parts.fixed(), CENT);
        BillParts building = shared.withoutCharging().orElseThrow().parts();
        assertEquals(12 * 50, building.fixed(), CENT);
        assertEquals(12 * 8 * BUILDING_KW, building.demand(), CENT);
        assertEquals(0.12 * 8760 * BUILDING_KW, building.energy(), 0.12 * 24 * BUILDING_KW * 6, "twelve months of thirty days or so");
    }

    @Test
    void eachPartRisesWithItsOwnPrice() {
        for (YardYear year : List.of(own, shared)) {
            BillParts risen = year.parts(new BillIndex(1.5, 2, 3));
            assertEquals(1.5 * year.parts().energy(), risen.energy(), CENT);
            assertEquals(2 * year.parts().demand(), risen.demand(), CENT);
            assertEquals(3 * year.parts().fixed(), risen.fixed(), CENT);
        }
    }

    /** What the meter counts is what the buses take and what the ports draw at all hours, 2 × 20 W through the year of thirty-day months. */
    @Test
    void energyAtTheMeterIsThatOfTheBusesAndTheStandby() {
        double busesKwh = own.busKwh().stream().mapToDouble(Double::doubleValue).sum();
        assertEquals(busesKwh + 0.04 * 24 * 30 * 12, own.yardKwh(), 1e-6);
        assertEquals(0, own.totalMissingKwh(), 0);
        assertEquals(own.yardKwh(), own.neededKwh(), 0);
        assertEquals(own.busKwh().get(0), own.neededKwh(3), 0);
        assertEquals(own.busKwh().get(1), own.neededKwh(5), 0);
        assertEquals(0, own.neededKwh(0), 0);
        assertEquals(SampleBuses.usedKwh(own.input()), AC.efficiency() * busesKwh, 1e-6);
    }

    /** A port of 2 kW cannot bring what the buses need: what is missing is told by bus, and needed all the same. */
    @Test
    void whatIsMissingIsNeededToo() {
        Port weak = new Port("Weak", false, 2, 0.88, 20, 0, 0, 10, 20, 0);
        YardYear year = YardYear.of(yard(false, 1).withPorts(PortUnit.of(weak, 1, 2)));
        assertTrue(year.missingKwh().stream().allMatch(kwh -> kwh > 0), year.missingKwh().toString());
        assertEquals(year.missingKwh().get(0) + year.missingKwh().get(1), year.totalMissingKwh(), 1e-9);
        assertEquals(year.yardKwh() + year.totalMissingKwh(), year.neededKwh(), 0);
        assertEquals(SampleBuses.usedKwh(year.input()), 0.88 * (year.busKwh().get(0) + year.busKwh().get(1)), 1e-6);
        assertEquals(year.busKwh().get(0) + year.busKwh().get(1) + 0.04 * 24 * 30 * 12, year.neededKwh(), 1e-6);
        assertEquals(2, year.months().get(0).shortfalls().stream().map(YardYear.Shortfall::bus).distinct().count());
    }

    /** Months of 1 to 12: figures of the year are their sums, demands the highest of them. */
    @Test
    void theYearOfItsMonths() {
        List<YardYear.Month> months = IntStream.range(0, 12).mapToObj(m -> new YardYear.Month(m, m + 1, 12 - m, 100 + m % 7, 2 * (m + 1), List.of(),
                0, OptionalDouble.empty())).toList();
        YardYear year = new YardYear(own.input(), months, List.of(70.0, 20.0), List.of(3.0, 4.0), own.bills(), own.withoutCharging());
        assertEquals(78, year.yardKwh(), 0);
        assertEquals(156, year.swaps(), 0);
        assertEquals(12, year.yardPeakKw(), 0);
        assertEquals(106, year.servicePeakKw(), 0);
        assertEquals(7, year.totalMissingKwh(), 0);
        assertEquals(85, year.neededKwh(), 0);
    }

    /** The first port serves both buses in turn, which takes a swap on each evening of service. */
    @Test
    void sharedPortsAreSwapped() {
        assertEquals(0, own.swaps(), 0);
        YardYear one = YardYear.of(yard(false, 1));
        assertEquals(11 * 18, one.swaps(), 1e-9);
        assertTrue(one.yardPeakKw() < own.yardPeakKw());
    }

    /** Ports that cost otherwise leave the year as it is. */
    @Test
    void theYearOfAYardWhosePortsCostOtherwise() {
        assertSame(own, own.ofYard(yard(false, 2)));
        YardInput dearer = own.input().unpriced().withPorts(PortUnit.of(
                new Port("AC", false, 19.2, 0.88, 20, 7000, 900, 10, 20, 30), 1, 2));
        YardYear same = own.ofYard(dearer);
        assertEquals(dearer, same.input());
        assertEquals(own.months(), same.months());
        assertEquals(own.parts(), same.parts());
        assertEquals(own.busKwh(), same.busKwh());
    }
}
