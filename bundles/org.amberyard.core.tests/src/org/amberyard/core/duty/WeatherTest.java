package org.amberyard.core.duty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class WeatherTest {

    @Test
    void dayIsColdestAtSixAndWarmestAtThree() {
        WeatherDay day = WeatherDay.ofExtremes(-10, 4, new double[24]);
        assertEquals(-10, day.airC(6 * 60), 1e-12);
        assertEquals(4, day.airC(15 * 60), 1e-12);
        assertEquals((day.airC(600) + day.airC(660)) / 2, day.airC(630), 1e-12);
        assertEquals(day.airC(0), day.airC(1440), 1e-12);
        assertEquals(day.airC(23 * 60 + 30), (day.airC(23 * 60) + day.airC(0)) / 2, 1e-12);
    }

    @Test
    void hourlyArraysAreTakenAsTheyAre() {
        double[] air = IntStream.range(0, 24).mapToDouble(h -> h).toArray();
        WeatherDay day = new WeatherDay(air, new double[24]);
        assertEquals(13.5, day.airC(13.5 * 60), 1e-12);
        assertEquals(11.5, day.meanAirC(), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> new WeatherDay(new double[23], new double[24]));
    }

    @Test
    void daysLieInOrderFromColdestToHottest() {
        Climate.MonthWeather month = new Climate.MonthWeather(WeatherDay.steady(0), WeatherDay.steady(-10), WeatherDay.steady(30));
        assertEquals(-10, month.inOrder(0).meanAirC(), 1e-12);
        assertEquals(-5, month.inOrder(0.25).meanAirC(), 1e-12);
        assertEquals(0, month.inOrder(0.5).meanAirC(), 1e-12);
        assertEquals(30, month.inOrder(1).meanAirC(), 1e-12);
    }

    @Test
    void sunShinesByDayAndMoreInSummer() {
        double[] june = ClearSky.hourlyWPerM2(45, 5, 1);
        double[] december = ClearSky.hourlyWPerM2(45, 11, 1);
        assertEquals(0, june[0], 0);
        assertEquals(june[10], june[14], 1e-9);
        assertTrue(june[12] > 2 * december[12] && december[12] > 100);
        assertEquals(0.5 * june[12], ClearSky.hourlyWPerM2(45, 5, 0.5)[12], 1e-9);
    }
}
