package org.amberyard.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.charging.ChargeRule;
import org.amberyard.core.depot.ServiceYear;
import org.amberyard.core.tariff.DayClass;
import org.amberyard.core.tariff.DemandCharge;
import org.amberyard.core.tariff.EnergyCharge;
import org.amberyard.core.tariff.MinimumBill;
import org.amberyard.core.tariff.Riders;
import org.amberyard.core.tariff.ShareCharge;
import org.amberyard.core.tariff.Tariff;
import org.amberyard.core.tariff.TariffPeriod;
import org.amberyard.core.yard.Metering;
import org.amberyard.core.yard.StretchKind;
import org.amberyard.core.yard.PortOffer;
import org.amberyard.core.yard.SwapTimes;
import org.amberyard.core.yard.YardComparison;
import org.amberyard.core.yard.YardMemory;
import org.amberyard.core.yard.YardPlanner;
import org.junit.jupiter.api.Test;

/** Figures behind the charts of the yard, by hand on the tiny yard. */
class YardDataTest {
    private static final ChargeRule AT_ONCE = ChargeRule.of(ChargePolicy.AT_ONCE);
    private static final SwapTimes ALWAYS = new SwapTimes(0, 0);
    private static final double CLOSE = 1e-9;
    private static final Metering OWN = Metering.own(TinyYard.flat());
    private static final Metering SHARED = new Metering(TinyYard.flat(), true, List.of(), OptionalInt.empty());

    private static DayLoad load(TinyYard yard) {
        return new DayLoad(yard.year(), yard.january(StretchKind.SERVICE_DAY));
    }

    @Test
    void layersLieOnTheBuildingAndTheHourOfThePeakHasBothBuses() {
        DayLoad load = load(TinyYard.of(2, AT_ONCE, OWN, ALWAYS));
        assertEquals(List.of("Building", "Ports at rest", "Heat of buses", "A", "B"),
                load.layers().stream().map(DayLoad.Layer::label).toList());
        int six = 18 * 4;
        assertEquals(six, load.peakStep());
        assertEquals(List.of("A", "B"), load.chargingAt(six));
        assertEquals(20, load.meterKw()[six], CLOSE, "a meter of its own does not see the building");
        assertEquals(50, load.servicePeakKw(), CLOSE);
        for (DayLoad.Layer bus : load.buses()) {
            assertEquals(10, bus.kw()[six], CLOSE);
            assertEquals(10, bus.kw()[six + 7], 1e-6);
            assertEquals(0, bus.kw()[six + 8], 1e-6, "full after two hours");
        }
    }

    @Test
    void aSharedMeterSeesTheBuilding() {
        assertEquals(50, load(TinyYard.of(2, AT_ONCE, SHARED, ALWAYS)).meterKw()[18 * 4], CLOSE);
    }

    @Test
    void hoursOfAPriceAreJoinedAndBearTaxes() {
        TariffPeriod day = new TariffPeriod(IntStream.range(0, 12).boxed().collect(Collectors.toSet()),
                EnumSet.of(DayClass.WEEKDAY), List.of(new TariffPeriod.Hours(6 * 60, 22 * 60)));
        TariffPeriod night = new TariffPeriod(day.months(), day.days(), List.of(new TariffPeriod.Hours(22 * 60, 6 * 60)));
        TariffPeriod weekend = new TariffPeriod(day.months(), EnumSet.complementOf(EnumSet.of(DayClass.WEEKDAY)),
                List.of(TariffPeriod.Hours.ALL_DAY));
        Tariff tariff = new Tariff("Hours", List.of(), MinimumBill.NONE, List.of(EnergyCharge.of("Day", day, 0.2),
                EnergyCharge.of("Night", night, 0.1), EnergyCharge.of("Weekend", weekend, 0.1)),
                List.of(DemandCharge.of("Demand", day, 10)), Riders.NONE, List.of(ShareCharge.ofCharges("Tax", 0.1)), 1);
        TinyYard yard = TinyYard.of(2, AT_ONCE, Metering.own(tariff), ALWAYS);
        PriceBands bands = PriceBands.of(yard.input(), new YardPlanner(yard.input()).year().get(0), StretchKind.BEFORE_WEEKEND);
        assertEquals(List.of(0.0, 360.0, 1320.0), bands.bands().stream().map(PriceBands.Band::fromMin).toList());
        assertEquals(3 * 1440, bands.bands().get(2).toMin(), CLOSE, "the night goes on through the weekend");
        assertEquals(0.11, bands.bands().get(0).perKwh(), CLOSE);
        assertEquals(0.22, bands.bands().get(1).perKwh(), CLOSE);
        assertEquals(List.of(false, true, false), bands.bands().stream().map(PriceBands.Band::demand).toList());
        assertEquals(11, bands.demandPerKw(), CLOSE);
        assertTrue(bands.demandByHours());
    }

    @Test
    void busesShareAPortWhereAPersonMovesThePlug() {
        PortRows ports = new PortRows(TinyYard.of(1, AT_ONCE, OWN, ALWAYS).january(StretchKind.SERVICE_DAY));
        assertEquals(List.of("AC, no. 1"), ports.rows().stream().map(PortRows.Row::label).toList());
        List<PortRows.Flow> flows = ports.flows();
        assertEquals(List.of("A", "B"), flows.stream().map(PortRows.Flow::label).sorted().toList());
        flows.forEach(f -> assertEquals(20, f.kwh(), 1e-6));
        flows.forEach(f -> assertEquals(10, f.kw(), 1e-6));
        assertEquals(18 * 60, flows.stream().mapToDouble(PortRows.Flow::fromMin).min().orElseThrow(), CLOSE);
        assertEquals(22 * 60, flows.stream().mapToDouble(PortRows.Flow::toMin).max().orElseThrow(), CLOSE);
        assertEquals(1, ports.swaps());
        assertEquals(List.of(20.0 * 60),
                ports.stays().stream().filter(PortRows.Stay::swap).map(PortRows.Stay::fromMin).toList());
        assertEquals(List.of(), ports.troubles());
    }

    @Test
    void aStayOverMidnightIsInTwoParts() {
        PortRows ports = new PortRows(TinyYard.of(2, AT_ONCE, OWN, ALWAYS).january(StretchKind.SERVICE_DAY));
        assertEquals(List.of(0.0, 1080.0), ports.stays().stream().filter(s -> "A".equals(s.label()))
                .map(PortRows.Stay::fromMin).toList());
        assertEquals(List.of(360.0, 1440.0), ports.stays().stream().filter(s -> "A".equals(s.label()))
                .map(PortRows.Stay::toMin).toList());
        assertEquals(0, ports.swaps());
    }

    @Test
    void aBusThatNobodyPlugsInIsNamed() {
        PortRows ports = new PortRows(TinyYard.of(1, AT_ONCE, OWN, new SwapTimes(8 * 60, 9 * 60))
                .january(StretchKind.SERVICE_DAY));
        assertEquals(1, ports.flows().stream().map(PortRows.Flow::label).distinct().count());
        assertTrue(ports.troubles().stream().anyMatch(t -> t.contains("B misses 06:00 by 18.0 kWh")), ports.troubles().toString());
    }

    @Test
    void aBillStartsAtZeroOnAMeterOfItsOwn() {
        BillSteps bill = BillSteps.of(TinyYard.of(2, AT_ONCE, OWN, ALWAYS).year(), 0);
        assertEquals(Optional.empty(), bill.building());
        assertEquals(List.of("Customer charge", "Energy", "Demand"), bill.steps().stream().map(BillSteps.Step::label).toList());
        assertEquals(100, bill.steps().get(0).amount(), CLOSE);
        assertEquals(80, bill.steps().get(1).amount(), 1e-6, "20 days, two buses, 20 kWh, 0.10");
        assertEquals(200, bill.steps().get(2).amount(), 1e-6, "20 kW, 10");
        assertEquals(380, bill.total(), 1e-6);
        assertEquals("20 kW × 10.00", bill.steps().get(2).price());
        assertTrue(bill.steps().get(2).detail().startsWith("20 kW × 10.00, set at 18:00 on "), bill.steps().get(2).detail());
    }

    @Test
    void aSharedBillStartsAtTheBuildings() {
        BillSteps bill = BillSteps.of(TinyYard.of(2, AT_ONCE, SHARED, ALWAYS).year(), 0);
        assertEquals(100 + 31 * 24 * 30 * 0.1 + 300, bill.building().orElseThrow(), 1e-6);
        assertEquals(List.of("Energy", "Demand"), bill.shown().stream().map(BillSteps.Step::label).toList());
        assertEquals(80, bill.shown().get(0).amount(), 1e-6);
        assertEquals(200, bill.shown().get(1).amount(), 1e-6);
        assertEquals(bill.total(), bill.building().orElseThrow() + 280, 1e-6);
    }

    private static List<PolicyCosts.Cost> policies(TinyYard yard) {
        return PolicyCosts.of(new YardComparison(List.of(yard.input()), List.of(), new PortOffer(List.of(), 0), List.of(),
                new YardMemory()).policies(0));
    }

    @Test
    void policiesDifferByTheirDemand() {
        List<PolicyCosts.Cost> costs = policies(TinyYard.of(2, AT_ONCE, OWN, ALWAYS));
        PolicyCosts.Cost once = costs.get(ChargePolicy.AT_ONCE.ordinal());
        assertEquals(960, once.parts().energy(), 1e-6);
        assertEquals(2400, once.parts().demand(), 1e-6);
        assertEquals(1200, once.parts().fixed(), 1e-6);
        PolicyCosts.Cost spread = costs.get(ChargePolicy.SPREAD.ordinal());
        assertEquals(960, spread.parts().energy(), 1e-6);
        assertEquals(12 * 10 * 40 / 12.0, spread.parts().demand(), 1e-6, "40 kWh evenly over twelve hours");
        assertTrue(costs.stream().allMatch(c -> c.shortBuses().isEmpty()));
    }

    @Test
    void aPolicyThatLeavesABusShortNamesIt() {
        PolicyCosts.Cost once = policies(TinyYard.of(1, AT_ONCE, OWN, new SwapTimes(8 * 60, 9 * 60)))
                .get(ChargePolicy.AT_ONCE.ordinal());
        assertEquals(List.of("B"), once.shortBuses());
        assertEquals((240 - 48) * 20, once.missingKwh(), 1e-6, "on Fridays it is plugged in the next morning");
    }

    @Test
    void theFirstYearsOfBreachAndUpgradesAreNamed() {
        ServiceYear before = new ServiceYear(1, 100, 50, 190, 120, 200, 300);
        ServiceYear ports = new ServiceYear(3, 300, 90, 390, 180, 200, 300);
        ServiceYear both = new ServiceYear(4, 400, 150, 490, 240, 200, 300);
        ServiceYear upgraded = new ServiceYear(4, 400, 150, 490, 240, 500, 300);
        ServiceLoadText text = new ServiceLoadText(2026, "P", List.of(before, ports, both, upgraded));
        assertEquals("{1=all ports over limit, 2=planned load over limit}", text.breaches().toString());
        assertTrue(text.sentences().contains("too much for the service from 2027 on (390 of 200 kVA)"), text.sentences());
        assertTrue(text.sentences().contains("Upgraded to 300 kVA in 2029."), text.sentences());
        assertTrue(text.sentences().contains("licensed electrician"), text.sentences());
        assertFalse(new ServiceLoadText(2026, "P", List.of(before)).sentences().contains("too much"));
    }

    @Test
    void loadsOfTheYardAskedForLastAreKept() {
        TinyYard yard = TinyYard.of(2, AT_ONCE, OWN, ALWAYS);
        YardLoads loads = new YardLoads();
        assertSame(loads.of(yard.input()), loads.of(yard.input()));
        assertEquals(1, loads.of(TinyYard.of(1, AT_ONCE, OWN, ALWAYS).input()).get(0).stretches().get(0).charging().units().size());
    }
}
