package org.amberyard.core.yard;

import static org.amberyard.core.yard.SampleBuses.AC;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.charging.ChargeRule;
import org.amberyard.core.charging.PortUnit;
import org.amberyard.core.depot.Port;
import org.amberyard.core.duty.Climate;
import org.amberyard.core.duty.EnergyCauses;
import org.amberyard.core.duty.EnergyUse;
import org.amberyard.core.tariff.Tariff;
import org.junit.jupiter.api.Test;

/** What buses need on a day in January, by hand: eighteen days of service in eleven months, 198 in all. All data invented. */
class BusNeedsTest {
    private static final double EXACT = 1e-9;
    private static final int DAYS = 18;
    private static final int DAYS_OF_YEAR = 11 * DAYS;
    /** On each day of service 12 kWh from the battery and 1 kWh of heat beside any route. */
    private static final EnergyUse OTHER = new EnergyUse(500, 20, 12.0 * DAYS_OF_YEAR, 0, EnergyCauses.ZERO, DAYS_OF_YEAR, 0, 0, 0);
    private static final BuildingLoad NO_BUILDING = BuildingLoad.constant(0, SampleBuses.STEPS);
    private static final Metering OWN = Metering.own(Tariff.flat("Flat", 50, 0.12, 0, 8, 0));
    /** Months of 990 kWh less 122.65 kWh of the coldest and hottest day, over sixteen others of 55 kWh. */
    private static final double FACTOR = (990 - 1.33 * 55 - 0.9 * 55) / (16 * 55);
    /** Heat of 54 kWh less 9 kWh, over sixteen others of 3 kWh: of each run 1 kWh times this. */
    private static final double HEAT_FACTOR = (54 - 9) / (16 * 3.0);

    private static YardBus parked(double tripKwh, double returnMin) {
        List<TripDay> trips = tripKwh == 0 ? List.of() : IntStream.range(0, Climate.MONTHS).filter(m -> m != SampleBuses.JULY)
                .mapToObj(m -> new TripDay(m, false, 950, returnMin, tripKwh)).toList();
        return new YardBus(0, "Bus", 19.2, 60, SampleBuses.PACK, 0.9, Optional.empty(), 1, OTHER, trips);
    }

    private static YardBus driven() {
        return SampleBuses.bus(0, SampleBuses.route(DAYS, 30, 0, 25), 1, EnergyUse.ZERO);
    }

    private static BusNeed need(YardBus bus, StretchKind kind, int buses, Port port) {
        YardInput yard = SampleBuses.yard(Collections.nCopies(buses, bus), PortUnit.of(port, 1, 1), ChargeRule.of(ChargePolicy.SPREAD), false, OWN,
                NO_BUILDING, DAYS);
        return new BusNeeds(bus, yard).on(yard.calendar().in(0).get(0), kind);
    }

    private static void assertStay(double fromMin, double toMin, double byMin, double kwh, BusNeed need) {
        assertEquals(1, need.stays().size());
        BusNeed.Stay stay = need.stays().get(0);
        assertEquals(fromMin, stay.fromMin(), 0);
        assertEquals(toMin, stay.toMin(), 0);
        assertEquals(byMin, stay.chargeByMin(), EXACT);
        assertEquals(kwh, stay.batteryKwh(), EXACT);
        assertEquals(kwh, stay.leastKwh(), EXACT);
        assertEquals(1, stay.endShare(), 0);
    }

    /** It stands from 18:00 to 6:00; heat is 1 kWh in those twelve hours. */
    @Test
    void aBusWithoutARouteStandsThroughTheNight() {
        BusNeed need = need(parked(0, 0), StretchKind.SERVICE_DAY, 1, AC);
        assertStay(1080, 1800, 1800, 12, need);
        assertEquals(BatterySpec.MILD_C, need.stays().get(0).packC(), 0);
        assertEquals(1.0 / 12, need.stays().get(0).heatKw(), EXACT);
        assertEquals(List.of(new BusNeed.Heat(1080, 1800, 1.0 / 12)), need.heat());
        assertEquals(12, need.batteryKwh(), EXACT);
        assertEquals(1, need.heatKwh(), EXACT);
    }

    @Test
    void overAWeekendItStandsTwoDaysLonger() {
        assertStay(1080, 1800 + 2 * 1440, 1800 + 2 * 1440, 12, need(parked(0, 0), StretchKind.BEFORE_WEEKEND, 1, AC));
    }

    /** Eleven trips of 18 kWh are 1 kWh a day, so 11 kWh are left for each day, and the day of the trip takes 18 kWh more. */
    @Test
    void aTripIsTakenOnItsDay() {
        assertStay(1080, 1800, 1800, 11, need(parked(18, 1350), StretchKind.SERVICE_DAY, 1, AC));
        assertStay(1350, 1800, 1800, 29, need(parked(18, 1350), StretchKind.TRIP_DAY, 1, AC));
        assertStay(1080, 1800, 1800, 29, need(parked(18, 1000), StretchKind.TRIP_DAY, 1, AC));
    }

    /** Back at 7:00, an hour after it should have left, it stands a minute. */
    @Test
    void aBusThatComesTooLateStandsAMinute() {
        assertStay(1860, 1861, 1861, 29, need(parked(18, 1860), StretchKind.TRIP_DAY, 1, AC));
    }

    /** Home at 15:35, away at 6:30; charged before heat begins, the last of it for half an hour times its share at 1 kW. */
    @Test
    void aBusOnARouteIsChargedBeforeItIsHeated() {
        BusNeed need = need(driven(), StretchKind.SERVICE_DAY, 1, AC);
        double heatedMin = 30 * HEAT_FACTOR;
        assertStay(935, 1830, 1830 - heatedMin, 55 * FACTOR, need);
        assertEquals(12, need.stays().get(0).packC(), 0);
        assertEquals(3 * HEAT_FACTOR, need.heatKwh(), EXACT, "three runs of 1 kWh");
        double standingKw = HEAT_FACTOR / 2 / ((1830 - 935) / 60.0);
        assertEquals(standingKw, need.stays().get(0).heatKw(), EXACT);
        assertEquals(1, need.heat().stream().filter(h -> h.toMin() == 1830 && h.kw() == 1).count());
    }

    /** The coldest day counts whole: 1.33 times the energy, three times the heat. */
    @Test
    void theColdestDayCountsWhole() {
        BusNeed need = need(driven(), StretchKind.COLDEST_DAY, 1, AC);
        assertStay(935, 1830, 1800, 1.33 * 55, need);
        assertEquals(6, need.stays().get(0).packC(), 0);
        assertEquals(9, need.heatKwh(), EXACT);
    }

    /** A port of 4 kW charges until the departure, so what heats the bus in its last half hour is taken from the battery and charged. */
    @Test
    void aWeakPortChargesTheHeatBesideIt() {
        Port weak = new Port("Weak", false, 4, 0.88, 0, 0, 0, 10, 20, 0);
        BusNeed need = need(driven(), StretchKind.SERVICE_DAY, 1, weak);
        assertStay(935, 1830, 1830, 55 * FACTOR + HEAT_FACTOR / 2, need);
        assertEquals(2.5 * HEAT_FACTOR, need.heatKwh(), EXACT);
    }

    /** Two buses at one port cannot count on it when heat is due: all heat is charged. */
    @Test
    void atASharedPortAllHeatIsCharged() {
        BusNeed need = need(driven(), StretchKind.SERVICE_DAY, 2, AC);
        assertStay(935, 1830, 1830, 55 * FACTOR + 3 * HEAT_FACTOR, need);
        assertEquals(List.of(), need.heat());
    }
}
