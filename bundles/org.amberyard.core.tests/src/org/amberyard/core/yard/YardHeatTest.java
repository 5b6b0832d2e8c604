package org.amberyard.core.yard;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.amberyard.core.duty.DayBlock;
import org.amberyard.core.duty.EnergyCauses;
import org.amberyard.core.duty.EnergyUse;
import org.junit.jupiter.api.Test;

/** Heat before departures and through the night, computed by hand. A bus is home at 17:00 and leaves at 6:30, 13.5 hours later. */
class YardHeatTest {
    private static final double LAST_MIN = 17 * 60.0;
    private static final double NEXT_MIN = 1440 + 390.0;
    private static final double NIGHT_HOURS = 13.5;
    private static final double EXACT = 1e-12;

    private static DayBlock.Leg leg(double departureMin, double arrivalMin, double gridKwh, double preheatKw) {
        return new DayBlock.Leg("Run", departureMin, arrivalMin, true, -10, new EnergyUse(20, 1, 30, 0, EnergyCauses.ZERO, gridKwh, 0, 0, 0), 5,
                preheatKw);
    }

    private static YardHeat night(double gridKwh, double preheatKw, double factor, double otherKwh, double portKw) {
        return YardHeat.of(new DayBlock(List.of(leg(390, 455, gridKwh, preheatKw)), 5), factor, LAST_MIN, NEXT_MIN, otherKwh, portKw);
    }

    private static void assertHeat(double fromMin, double toMin, double kw, BusNeed.Heat heat) {
        assertEquals(fromMin, heat.fromMin(), 1e-9);
        assertEquals(toMin, heat.toMin(), 0);
        assertEquals(kw, heat.kw(), EXACT);
    }

    /** Of 3 kWh 4 kW for half an hour are 2 kWh; the other one, and 1.7 kWh for other driving, go through the night. */
    @Test
    void halfAnHourBeforeTheDepartureAndTheRestThroughTheNight() {
        YardHeat heat = night(3, 4, 1, 1.7, 19);
        assertEquals(1, heat.beforeDepartures().size());
        assertHeat(NEXT_MIN - 30, NEXT_MIN, 4, heat.beforeDepartures().get(0));
        assertEquals(1, heat.standing().size());
        assertHeat(LAST_MIN, NEXT_MIN, 2.7 / NIGHT_HOURS, heat.standing().get(0));
        assertEquals(0, heat.lackingKwh(), EXACT);
        assertEquals(4.7, heat.kwh(), EXACT);
    }

    /** Half of a day is heated at the same power for half the time. */
    @Test
    void aDayThatCountsInPartIsHeatedForAShorterTime() {
        YardHeat heat = night(3, 4, 0.5, 0, 19);
        assertHeat(NEXT_MIN - 15, NEXT_MIN, 4, heat.beforeDepartures().get(0));
        assertHeat(LAST_MIN, NEXT_MIN, 0.5 / NIGHT_HOURS, heat.standing().get(0));
    }

    /** Less heat than half an hour at that power gives is given in the last minutes: 1 kWh at 4 kW in a quarter of an hour. */
    @Test
    void littleHeatComesLast() {
        YardHeat heat = night(1, 4, 1, 0, 19);
        assertHeat(NEXT_MIN - 15, NEXT_MIN, 4, heat.beforeDepartures().get(0));
        assertEquals(List.of(), heat.standing());
    }

    /** The port has 2 kW: what goes through the night comes first, and what is missing before the departure lacks. */
    @Test
    void aWeakPortGivesWhatItCan() {
        YardHeat heat = night(3, 4, 1, 12.5, 2);
        double evenKw = 13.5 / NIGHT_HOURS;
        assertHeat(LAST_MIN, NEXT_MIN, evenKw, heat.standing().get(0));
        assertHeat(NEXT_MIN - 30, NEXT_MIN, 2 - evenKw, heat.beforeDepartures().get(0));
        assertEquals(2 - (2 - evenKw) / 2, heat.lackingKwh(), EXACT);
    }

    /** All its power goes through the night: 27 kWh of 30 for other driving, and none is left before the departure. */
    @Test
    void aPortThatIsTooWeakForTheNightLeavesTheRestToTheBattery() {
        YardHeat heat = night(3, 4, 1, 30, 2);
        assertHeat(LAST_MIN, NEXT_MIN, 2, heat.standing().get(0));
        assertEquals(List.of(), heat.beforeDepartures());
        assertEquals(33 - 27, heat.lackingKwh(), EXACT);
    }

    /** From 17:00 to 17:12 there are 12 minutes: 0.8 kWh at 4 kW, and the rest evenly beside it. */
    @Test
    void aShortStandIsHeatedAllTheTime() {
        YardHeat heat = YardHeat.of(new DayBlock(List.of(leg(390, 455, 3, 4)), 5), 1, LAST_MIN, LAST_MIN + 12, 0, 19);
        assertHeat(LAST_MIN, LAST_MIN + 12, 4, heat.beforeDepartures().get(0));
        assertHeat(LAST_MIN, LAST_MIN + 12, 2.2 / 0.2, heat.standing().get(0));
        assertEquals(0, heat.lackingKwh(), EXACT);
    }

    @Test
    void aBusThatComesWhenItShouldLeaveIsNotHeated() {
        YardHeat heat = YardHeat.of(new DayBlock(List.of(leg(390, 455, 3, 4)), 5), 1, LAST_MIN, LAST_MIN - 20, 0, 19);
        assertEquals(List.of(), heat.all());
        assertEquals(3, heat.lackingKwh(), EXACT);
    }

    /** The second run's heat falls between the runs; that for other driving into the night alone. */
    @Test
    void eachRunIsHeatedFromTheStandBeforeIt() {
        DayBlock day = new DayBlock(List.of(leg(390, 455, 3, 4), leg(870, 935, 5, 6)), 5);
        YardHeat heat = YardHeat.of(day, 1, 935, NEXT_MIN, 2, 19);
        assertEquals(2, heat.beforeDepartures().size());
        assertHeat(NEXT_MIN - 30, NEXT_MIN, 4, heat.beforeDepartures().get(0));
        assertHeat(840, 870, 6, heat.beforeDepartures().get(1));
        assertHeat(935, NEXT_MIN, 3 / ((NEXT_MIN - 935) / 60), heat.standing().get(0));
        assertHeat(455, 870, 2 / (415.0 / 60), heat.standing().get(1));
        assertEquals(10, heat.kwh(), EXACT);
        assertEquals(4, heat.all().size());
        assertEquals(840, heat.beginsMin(870), 1e-9);
        assertEquals(NEXT_MIN - 30, heat.beginsMin(NEXT_MIN), 1e-9);
        assertEquals(600, heat.beginsMin(600), 0, "no run begins there");
    }

    /** What holds the pack counts while the bus stands there, whatever part of it is asked for. */
    @Test
    void powerThatHoldsThePackCountsWhereTheTimesMeet() {
        YardHeat heat = YardHeat.even(1000, 1600, 20);
        assertEquals(2, heat.standingKw(1000, 1600), EXACT);
        assertEquals(2, heat.standingKw(1599, 2000), EXACT);
        assertEquals(2, heat.standingKw(900, 1001), EXACT);
        assertEquals(0, heat.standingKw(1600, 1700), 0);
        assertEquals(0, heat.standingKw(900, 1000), 0);
        assertEquals(20, heat.kwh(), EXACT);
        assertEquals(List.of(), YardHeat.even(1000, 1000, 20).all());
        assertEquals(List.of(), YardHeat.even(1000, 1600, 0).all());
    }

    private static BusNeed.Stay stay(double toMin, double chargeByMin) {
        return new BusNeed.Stay(LAST_MIN, toMin, chargeByMin, 20, 20, 1, 5, 0);
    }

    /** Charged until it leaves, a bus has its heat beside the charge; charged before, the heat stands by itself. */
    @Test
    void heatBesideTheChargeIsThatOfStaysChargedMeanwhile() {
        YardHeat heat = night(3, 4, 1, 1.7, 19);
        BusNeed.Stay meanwhile = stay(NEXT_MIN, NEXT_MIN);
        BusNeed.Stay before = stay(NEXT_MIN, NEXT_MIN - 30);
        assertEquals(2, heat.besideKwh(meanwhile), EXACT);
        assertEquals(0, heat.besideKwh(before), 0);
        assertEquals(0, heat.besideKwh(stay(870, 870)), 0, "another departure");
        assertEquals(heat.standing(), heat.apartFrom(List.of(before, meanwhile)).all());
        assertEquals(heat.all(), heat.apartFrom(List.of(before)).all());
        assertEquals(heat.all(), heat.apartFrom(List.of(stay(870, 870))).all());
        assertEquals(heat.all(), heat.apartFrom(List.of()).all());
        assertEquals(night(3, 4, 1, 30, 2).lackingKwh(), night(3, 4, 1, 30, 2).apartFrom(List.of()).lackingKwh(), 0);
    }
}
