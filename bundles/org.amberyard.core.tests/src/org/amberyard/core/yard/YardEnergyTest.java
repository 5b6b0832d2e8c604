package org.amberyard.core.yard;

import static org.amberyard.core.yard.SampleBuses.AC;
import static org.amberyard.core.yard.SampleBuses.DC;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.charging.ChargeRule;
import org.amberyard.core.charging.PortUnit;
import org.amberyard.core.duty.DayBlock;
import org.amberyard.core.duty.EnergyCauses;
import org.amberyard.core.duty.EnergyUse;
import org.amberyard.core.duty.RouteUse;
import org.amberyard.core.tariff.Tariff;
import org.junit.jupiter.api.Test;

class YardEnergyTest {
    private static final Metering OWN = Metering.own(Tariff.flat("Flat", 50, 0.12, 0, 8, 0));
    private static final BuildingLoad BUILDING = BuildingLoad.constant(40, SampleBuses.STEPS);

    private static YardYear year(YardBus bus, List<PortUnit> ports, ChargePolicy policy, boolean midday, int days) {
        return YardYear.of(SampleBuses.yard(List.of(bus), ports, ChargeRule.of(policy), midday, OWN, BUILDING, days));
    }

    /** Routes with fewer days than the yard, spare shares, trips, and days that fill the pack again by noon. */
    @Property(tries = 200)
    void whatIsUsedIsCharged(@ForAll @DoubleRange(min = 5, max = 40) double morning, @ForAll @DoubleRange(min = 3, max = 25) double midday,
            @ForAll @DoubleRange(min = 5, max = 40) double afternoon, @ForAll @IntRange(min = 1, max = 18) int days,
            @ForAll @IntRange(min = 0, max = 4) int fewer, @ForAll @DoubleRange(min = 0.5, max = 1) double share, @ForAll boolean plugged) {
        EnergyUse trips = new EnergyUse(500, 20, 600, 0, EnergyCauses.ZERO, 30, 0, 0, 0);
        RouteUse route = SampleBuses.route(Math.max(1, days - fewer), morning, midday, afternoon);
        for (ChargePolicy policy : List.of(ChargePolicy.AT_ONCE, ChargePolicy.SPREAD)) {
            YardYear year = year(SampleBuses.bus(0, route, share, trips), PortUnit.of(DC, 1, 1), policy, plugged, days);
            double used = SampleBuses.usedKwh(year.input());
            assertEquals(used, DC.efficiency() * year.busKwh().get(0), 1e-9 * used);
        }
    }

    /** One DC port beside enough AC ports does not let every bus count on DC power between runs. */
    @Test
    void aFastPortMoreLeavesNoBusShort() {
        List<YardBus> buses = IntStream.range(0, 4)
                .mapToObj(place -> SampleBuses.bus(place, SampleBuses.route(18, 58, 26, 58), 1, EnergyUse.ZERO)).toList();
        List<PortUnit> ports = new ArrayList<>(PortUnit.of(AC, 1, 4));
        for (int fast = 0; fast < 2; fast++) {
            YardYear year = YardYear.of(SampleBuses.yard(buses, ports, ChargeRule.of(ChargePolicy.SPREAD), true, OWN, BUILDING, 18));
            assertEquals(Collections.nCopies(4, 0.0), year.missingKwh());
            ports.addAll(PortUnit.of(DC, 1, 1));
        }
    }

    @Test
    void aBusThatComesAfterItShouldHaveLeftIsShort() {
        DayBlock.Leg leg = SampleBuses.day(1, 0, 15, 40).legs().get(0);
        DayBlock day = new DayBlock(List.of(new DayBlock.Leg(leg.name(), 390, 1900, true, 15, leg.use(), 15, 0)), 15);
        RouteUse route = new RouteUse(leg.use(), List.of(), List.of(new RouteUse.NormalDay(0, false, 1, day, leg.use())));
        YardYear year = year(SampleBuses.bus(0, route, 1, EnergyUse.ZERO), PortUnit.of(AC, 1, 1), ChargePolicy.AT_ONCE, false, 1);
        assertTrue(year.missingKwh().get(0) > 0.8 * 39, "all but where a weekend follows");
        assertEquals(40 / AC.efficiency(), year.busKwh().get(0), 1e-9);
    }

    /** A run that ends at half past midnight. */
    @Test
    void aBusThatComesAfterMidnightIsCharged() {
        DayBlock.Leg leg = SampleBuses.day(1, 0, 15, 40).legs().get(0);
        DayBlock day = new DayBlock(List.of(new DayBlock.Leg(leg.name(), 1200, 1470, true, 15, leg.use(), 15, 0)), 15);
        RouteUse route = new RouteUse(leg.use(), List.of(), List.of(new RouteUse.NormalDay(0, false, 1, day, leg.use())));
        YardYear year = year(SampleBuses.bus(0, route, 1, EnergyUse.ZERO), PortUnit.of(AC, 1, 1), ChargePolicy.AT_ONCE, false, 1);
        assertEquals(0, year.missingKwh().get(0));
        assertEquals(40 / AC.efficiency(), year.busKwh().get(0), 1e-9);
    }

    /** A building of nothing but a quarter of an hour at 300 kW on its peak day, behind the meter of a bus. */
    private static List<MonthLoad> besidePeaks(int days) {
        double[] mean = new double[SampleBuses.STEPS];
        double[] peak = new double[SampleBuses.STEPS];
        peak[60] = 300;
        List<double[]> means = Collections.nCopies(12, mean);
        BuildingLoad building = new BuildingLoad(means, means, Collections.nCopies(12, peak));
        Metering shared = new Metering(OWN.tariff(), true, OWN.holidays(), OWN.contractStart());
        YardInput yard = SampleBuses.yard(List.of(SampleBuses.bus(0, SampleBuses.route(days, 20, 5, 20), 1, EnergyUse.ZERO)),
                PortUnit.of(AC, 1, 1), ChargeRule.of(ChargePolicy.SPREAD), false, shared, building, days);
        return new YardPlanner(yard).year();
    }

    /** The peak of a building in July, in which no bus drives, is on the bill with and without charging. */
    @Test
    void aBuildingPeaksInMonthsWithoutService() {
        MonthLoad july = besidePeaks(15).get(SampleBuses.JULY);
        assertEquals(300.02, july.metered(true).peakKw(), 1e-9);
        assertEquals(30, july.metered(true).dayCount(), 1e-9);
        assertEquals(300, july.buildingOnly().peakKw(), 1e-9);
        assertEquals(0.02, july.yardPeakKw(), 1e-9);
    }

    /** 75 kWh on each day of the building's peak: on both days of extreme weather, or on a free day of a month with neither. */
    @Test
    void theBuildingsPeakStandsInEachMonth() {
        assertEquals(2 * 75, besidePeaks(15).get(0).buildingOnly().kwh(), 1e-9);
        assertEquals(2 * 75, besidePeaks(3).get(0).buildingOnly().kwh(), 1e-9);
        assertEquals(75, besidePeaks(2).get(0).buildingOnly().kwh(), 1e-9, "a coldest day alone");
        assertEquals(75, besidePeaks(1).get(0).buildingOnly().kwh(), 1e-9, "a free weekday");
        assertEquals(75, besidePeaks(15).get(SampleBuses.JULY).buildingOnly().kwh(), 1e-9);
    }
}
