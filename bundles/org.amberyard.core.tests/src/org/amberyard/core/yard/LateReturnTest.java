package org.amberyard.core.yard;

import static org.amberyard.core.yard.SampleBuses.AC;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.charging.ChargeRule;
import org.amberyard.core.charging.PlugIn;
import org.amberyard.core.charging.PortUnit;
import org.amberyard.core.duty.Climate;
import org.amberyard.core.duty.EnergyCauses;
import org.amberyard.core.duty.EnergyUse;
import org.amberyard.core.duty.RouteUse;
import org.amberyard.core.tariff.Tariff;
import org.junit.jupiter.api.Test;

/** Trips that come home late, heat beside charging, and the end of a set time. All data invented. */
class LateReturnTest {
    private static final Metering OWN = Metering.own(Tariff.flat("Flat", 50, 0.12, 0, 8, 0));
    private static final BuildingLoad NONE = BuildingLoad.constant(0, SampleBuses.STEPS);
    private static final double LEAVES_MIN = 950;
    private static final double BACK_MIN = 22 * 60 + 30;
    private static final double TRIP_KWH = 30;
    private static final EnergyUse OTHER = new EnergyUse(500, 20, 600, 0, EnergyCauses.ZERO, 0, 0, 0, 0);

    private static YardBus tripBus(Optional<RouteUse> route, EnergyUse other) {
        List<TripDay> trips = IntStream.range(0, Climate.MONTHS).filter(m -> m != SampleBuses.JULY)
                .mapToObj(m -> new TripDay(m, false, LEAVES_MIN, BACK_MIN, TRIP_KWH)).toList();
        return new YardBus(0, "Bus 0", 19.2, 60, SampleBuses.PACK, 0.9, route, 1, other, trips);
    }

    private static YardDetail detail(YardBus bus, ChargeRule rule) {
        return YardDetail.of(SampleBuses.yard(List.of(bus), PortUnit.of(AC, 1, 1), rule, true, OWN, NONE, 18));
    }

    private static StretchLoad stretch(YardDetail detail, StretchKind kind) {
        return detail.loads().get(9).stretches().stream().filter(s -> s.kind() == kind).findFirst().orElseThrow();
    }

    @Test
    void aBusOnATripChargesWhenItIsBack() {
        YardBus bus = tripBus(Optional.of(SampleBuses.route(18, 30, 10, 30)), OTHER);
        YardDetail atOnce = detail(bus, ChargeRule.of(ChargePolicy.AT_ONCE));
        double[] tripKw = stretch(atOnce, StretchKind.TRIP_DAY).busKw(0);
        double[] usualKw = stretch(atOnce, StretchKind.SERVICE_DAY).busKw(0);
        int back = (int) (BACK_MIN / 15);
        assertTrue(usualKw[(int) (LEAVES_MIN / 15)] > 10, "charges after its last run on other days");
        IntStream.range((int) (LEAVES_MIN / 15), back).forEach(step -> assertEquals(0, tripKw[step], 0, "step " + step));
        assertTrue(tripKw[back] > 10);
        double moreKwh = IntStream.range(0, tripKw.length).mapToDouble(step -> tripKw[step] - usualKw[step]).sum() / 4;
        assertEquals(TRIP_KWH / AC.efficiency(), moreKwh, 0.05 * TRIP_KWH, "the evening brings the trip's energy");
    }

    @Test
    void tripsTakeNoEnergyTwice() {
        for (YardBus bus : List.of(tripBus(Optional.of(SampleBuses.route(18, 30, 10, 30)), OTHER),
                tripBus(Optional.of(SampleBuses.route(18, 30, 10, 30)), OTHER.times(0.1)))) {
            YardYear year = detail(bus, ChargeRule.of(ChargePolicy.SPREAD)).year();
            double used = SampleBuses.usedKwh(year.input());
            assertEquals(used, AC.efficiency() * year.busKwh().get(0), 1e-9 * used);
        }
        YardYear parked = detail(tripBus(Optional.empty(), OTHER), ChargeRule.of(ChargePolicy.SPREAD)).year();
        assertEquals(OTHER.batteryKwh(), AC.efficiency() * parked.busKwh().get(0), 1e-9 * OTHER.batteryKwh());
    }

    /** A night with much heat for the pack, and heat of the cabin before each run. */
    @Test
    void heatAndChargeTogetherStayWithinThePort() {
        YardBus bus = SampleBuses.bus(0, SampleBuses.route(18, 38, 10, 38), 1, new EnergyUse(0, 0, 0, 0, EnergyCauses.ZERO, 60, 0, 0, 0));
        for (ChargePolicy policy : List.of(ChargePolicy.AT_ONCE, ChargePolicy.SPREAD, ChargePolicy.LEAST_COST)) {
            List<Double> most = new ArrayList<>();
            detail(bus, ChargeRule.of(policy)).loads().forEach(m -> m.stretches().forEach(s -> {
                for (double kw : s.busKw(0)) {
                    most.add(kw);
                }
            }));
            double mostKw = most.stream().mapToDouble(kw -> kw).max().orElseThrow();
            assertTrue(mostKw <= AC.powerKw() + 1e-9 && mostKw > 0.2 * AC.powerKw(), policy + " " + mostKw);
        }
    }

    @Test
    void chargingAtASetTimeEndsWithItsWindow() {
        YardBus bus = SampleBuses.bus(0, SampleBuses.route(18, 40, 0, 40), 1, EnergyUse.ZERO);
        ChargeRule short3Hours = new ChargeRule(ChargePolicy.SET_TIME, 23 * 60, 2 * 60);
        YardDetail ends = detail(new YardBus(0, "Bus 0", 9.6, 0, bus.battery(), 0.9, bus.route(), 1, EnergyUse.ZERO), short3Hours);
        double[] kw = stretch(ends, StretchKind.SERVICE_DAY).busKw(0);
        IntStream.range(2 * 4, 6 * 4).forEach(step -> assertEquals(0, kw[step], 0.1, "heat alone, step " + step));
        assertTrue(kw[4] > 9 && ends.year().missingKwh().get(0) > 0, "three hours are too short");
        assertEquals(0, detail(bus, ChargeRule.setTime(23 * 60)).year().missingKwh().get(0), 0);
    }

    /** From 22:00 to 5:00 on Friday, Saturday and Sunday, and not through the days between. */
    @Test
    void theSetTimeHoldsOnEveryDayOfAWeekend() {
        YardBus far = SampleBuses.bus(0, SampleBuses.route(18, 40, 0, 40), 1, EnergyUse.ZERO);
        YardBus slow = new YardBus(0, "Bus 0", 5, 0, far.battery(), 0.9, far.route(), 1, EnergyUse.ZERO);
        ChargeRule from22To5 = new ChargeRule(ChargePolicy.SET_TIME, 22 * 60, 5 * 60);
        StretchLoad weekend = stretch(YardDetail.of(SampleBuses.yard(List.of(slow), PortUnit.of(AC, 1, 1), from22To5,
                false, OWN,
                NONE, 18)), StretchKind.BEFORE_WEEKEND);
        double[] kw = weekend.schedule().totalKw();
        IntStream.range(0, 72).forEach(hour -> {
            boolean may = hour % 24 >= 22 || hour % 24 < 5;
            assertTrue(may || kw[4 * hour + 2] == 0, "hour " + hour + ": " + kw[4 * hour + 2]);
        });
        assertTrue(kw[4 * 46] > 4, "80 kWh at 4.4 kW take more than the seven hours of Friday night");
        assertEquals(List.of(), weekend.schedule().shortfalls());
    }

    /** It leaves at 6:30 whether charging ends at 5:00 or heat begins at 6:00. */
    @Test
    void whatABusMissesIsItsDeparture() {
        YardBus far = SampleBuses.bus(0, SampleBuses.route(18, 60, 0, 60), 1, EnergyUse.ZERO);
        YardBus slow = new YardBus(0, "Bus 0", 5, 0, far.battery(), 0.9, far.route(), 1, EnergyUse.ZERO);
        YardDetail short7Hours = detail(slow, new ChargeRule(ChargePolicy.SET_TIME, 22 * 60, 5 * 60));
        String words = stretch(short7Hours, StretchKind.SERVICE_DAY).schedule().shortfalls().get(0).words();
        assertTrue(words.startsWith("Bus 0 misses 06:30 by "), words);
        StretchLoad day = stretch(detail(far, ChargeRule.of(ChargePolicy.SPREAD)), StretchKind.COLDEST_DAY);
        PlugIn night = day.charging().stretch().plugIns().get(day.charging().stretch().plugIns().size() - 1);
        assertEquals(1440 + 390, night.toMin(), 0);
        assertEquals(1440 + 360, night.chargeByMin(), 0);
    }

    /**
     * Six buses that all come home from trips at half past ten and are charged at once make the month's highest
     * demand.
     */
    @Test
    void theDayOfTheHighestDemandIsShown() {
        List<YardBus> buses = Collections.nCopies(6, tripBus(Optional.of(SampleBuses.route(18, 40, 0, 40)), OTHER));
        YardDetail detail = YardDetail.of(SampleBuses.yard(buses, PortUnit.of(AC, 1, 6),
                ChargeRule.of(ChargePolicy.SPREAD), true, OWN,
                NONE, 18));
        List<StretchLoad> shown = detail.peakStretches(StretchKind.COLDEST_DAY, StretchKind.SERVICE_DAY);
        assertEquals(List.of(StretchKind.COLDEST_DAY, StretchKind.SERVICE_DAY, StretchKind.TRIP_DAY),
                shown.stream().map(StretchLoad::kind).toList());
        double coldest = Arrays.stream(shown.get(0).yardKw()).max().orElseThrow();
        assertEquals(detail.year().yardPeakKw(), Arrays.stream(shown.get(2).yardKw()).max().orElseThrow(), 1e-9);
        assertTrue(coldest < 0.6 * detail.year().yardPeakKw(), coldest + " of " + detail.year().yardPeakKw());
        assertEquals(0, shown.get(2).highestDay());
    }

    /** Three service days are too few for a day of trips of their own, so trips then fall evenly on all days. */
    @Test
    void tripsOfAMonthWithoutADayOfTripsAreCharged() {
        for (int days : new int[] {18, 3}) {
            YardYear year = YardYear.of(SampleBuses.yard(List.of(tripBus(Optional.empty(), OTHER)), PortUnit.of(AC, 1,
                    1),
                    ChargeRule.of(ChargePolicy.SPREAD), false, OWN, NONE, days));
            assertEquals(OTHER.batteryKwh(), AC.efficiency() * year.busKwh().get(0), 1e-9 * OTHER.batteryKwh(),
                    days + " days");
        }
    }
}
