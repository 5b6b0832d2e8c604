package org.amberyard.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.battery.LinearFade;
import org.amberyard.core.battery.ChargeAcceptance;
import org.amberyard.core.battery.PackHeat;
import org.amberyard.core.battery.PackLife;
import org.amberyard.core.battery.PackResistance;
import org.amberyard.core.duty.BrakeRecovery;
import org.amberyard.core.duty.Cabin;
import org.amberyard.core.duty.ClearSky;
import org.amberyard.core.duty.Climate;
import org.amberyard.core.duty.DriverStyle;
import org.amberyard.core.duty.DrivelineLoss;
import org.amberyard.core.duty.DutyInput;
import org.amberyard.core.duty.ElectricSpec;
import org.amberyard.core.duty.EnergyModel;
import org.amberyard.core.duty.EnergyUse;
import org.amberyard.core.duty.Heater;
import org.amberyard.core.duty.RollingResistance;
import org.amberyard.core.duty.RouteDuty;
import org.amberyard.core.duty.RouteInput;
import org.amberyard.core.duty.RunInput;
import org.amberyard.core.duty.VehicleBody;
import org.amberyard.core.duty.WeatherDay;
import org.amberyard.core.duty.YardHabit;
import org.amberyard.core.units.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Consumption and range of a type C electric school bus against what was published: a bus of 9.7 t with common inputs
 * (invented within the ranges that the data dictionary cites), on a route of 18 miles out and 18 back, 15 stops each, roads of 40 mph, 18 mph with all stops (invented).
 */
class ConsumptionReferenceTest {
    private static final double USABLE_SHARE = 0.9;

    private static ElectricSpec bus(double packKwh) {
        Cabin cabin = new Cabin(16, 0.2, 400, 0.004, 0.12, 3, 25, 2.5, 8);
        VehicleBody body = new VehicleBody("C", 9700, 0.008, 0.65 * 7, 1.05, DrivelineLoss.electric(0.88, 130, 50), 2.4, cabin);
        BatterySpec battery = new BatterySpec(packKwh, USABLE_SHARE, 0.004, new PackResistance(0.04),
                new ChargeAcceptance(1, 15, -10, 0.9), new PackHeat(8, 10, 6, 32, 2),
                new PackLife(2000, 0.7, 100, 1, new LinearFade(0.01, 0)));
        return new ElectricSpec("E", body, new BrakeRecovery(100, 8, 1.3),
                new Heater(Heater.Source.RESISTANCE, 20, 2.2, 0.05, 0.8), battery, Optional.empty());
    }

    private static RunInput run(String name, double departureMin) {
        List<Integer> days = IntStream.range(0, 12).mapToObj(m -> 15).toList();
        return new RunInput(name, departureMin, 60, 18 * Unit.KM_PER_MILE, 15, 20, 25, 40 * Unit.KM_PER_MILE, 60, true, false,
                days, Optional.empty());
    }

    private static EnergyUse day(double packKwh, double airC) {
        WeatherDay weather = WeatherDay.steady(airC);
        Climate climate = new Climate(200,
                IntStream.range(0, 12).mapToObj(m -> new Climate.MonthWeather(weather, weather, weather)).toList());
        RouteInput route = new RouteInput("R", "C", List.of(run("AM", 390), run("PM", 860)), EnergyModel.PHYSICS);
        DutyInput duty = new DutyInput(climate, DriverStyle.of(0.7, 0.9, 0.5), 55, List.of(route), List.of(bus(packKwh)),
                new YardHabit(false, false, 17), List.of());
        return RouteDuty.of(duty, route, bus(packKwh), 1).dayUse(0, false, weather);
    }

    private static double kwhPerMile(double airC) {
        EnergyUse day = day(150, airC);
        return day.batteryKwh() / day.km() * Unit.KM_PER_MILE;
    }

    /**
     * Three type C electric school buses in Massachusetts: 1.3 to 1.4 kWh/mi over about 14,000 miles and all seasons (US DOE
     * alternative fuels data center, case study 3092, read). The mild figure must lie a little below, the mean of a cold and a
     * mild day at most 15 % above.
     */
    @Test
    void schoolBusesInService() {
        double mild = kwhPerMile(18);
        assertTrue(mild > 1.15 && mild < 1.45, "mild: " + mild);
        double year = (kwhPerMile(0) + kwhPerMile(8) + kwhPerMile(18)) / 3;
        assertTrue(year > 1.3 && year < 1.4 * 1.15, "mean of the school year: " + year);
    }

    /**
     * Least between 15 and 22 °C, and near −2 °C 1.3 to 1.6 times as much: 48 % more at −4 to 0 °C than in the best range
     * (transit buses in Ithaca, Cornell University 2025, as reported, not read), 32 % less distance per energy between 50 to
     * 60 and 22 to 32 °F (Henning, Thomas, Smyth, "An Analysis of the Association between Changes in Ambient Temperature, Fuel
     * Economy, and Vehicle Range for Battery Electric and Fuel Cell Electric Buses", Cleveland State University 2019; its
     * existence read, the number from memory).
     */
    @Test
    void coldCostsWhatWasPublished() {
        int least = IntStream.rangeClosed(-20, 35).boxed().min(Comparator.comparingDouble(c -> kwhPerMile(c))).orElseThrow();
        assertTrue(least >= 15 && least <= 22, "least at " + least + " °C");
        double ratio = kwhPerMile(-2) / kwhPerMile(least);
        assertTrue(ratio > 1.3 && ratio < 1.6, "−2 °C over the least: " + ratio);
        double perEnergy = kwhPerMile(12.8) / kwhPerMile(-2.8);
        assertTrue(perEnergy > 0.60 && perEnergy < 0.85, "distance per energy at 27 over that at 55 °F: " + perEnergy);
    }

    /**
     * A bus of 100 nominal miles, its pack sized by 1.35 kWh/mi (invented offer): lands near 100 miles when mild, and loses
     * about a third near 25 °F (US DOE guidance as quoted in the press, not read; 38 % from 50 to 60 down to 22 to 32 °F in the
     * Cleveland State study, from memory).
     */
    @Test
    void aHundredMileBus() {
        double packKwh = 135 / USABLE_SHARE;
        double mild = rangeMiles(packKwh, 18);
        double cold = rangeMiles(packKwh, -4);
        assertEquals(100, mild, 12);
        double lost = 1 - cold / mild;
        assertTrue(lost > 0.22 && lost < 0.42, "share of the range lost at 25 °F: " + lost);
    }

    private static double rangeMiles(double packKwh, double airC) {
        BatterySpec battery = bus(packKwh).battery();
        double usableKwh = battery.usableKwh(1) * (1 - battery.lockedShare(Math.max(battery.heat().heatedToC(), airC)));
        EnergyUse day = day(packKwh, airC);
        return usableKwh / day.batteryKwh() * day.km() / Unit.KM_PER_MILE;
    }

    /** Values of the Haurwitz clear-sky formula as the pvlib library tests them by apparent elevation; from memory. */
    @ParameterizedTest
    @CsvSource({"5,48.6298687941956", "10,135.741748091813", "30,487.894132885425", "90,1035.0920325"})
    void clearSky(double elevationDeg, double wattsPerM2) {
        assertEquals(wattsPerM2, ClearSky.irradianceWPerM2(Math.sin(Math.toRadians(elevationDeg))), 0.1);
    }

    /** ISO 28580 corrects rolling resistance of truck and bus tyres to 25 °C by 0.006 per kelvin; from memory. */
    @Test
    void rollingResistanceByTemperature() {
        assertEquals(0.0055, RollingResistance.at(0.0055, 25), 1e-15);
        assertEquals(0.0055 * 1.03, RollingResistance.at(0.0055, 20), 1e-12);
    }
}
