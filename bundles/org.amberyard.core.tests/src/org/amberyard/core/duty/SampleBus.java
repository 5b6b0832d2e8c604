package org.amberyard.core.duty;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.battery.FadeLaw;
import org.amberyard.core.battery.LinearFade;
import org.amberyard.core.battery.ChargeAcceptance;
import org.amberyard.core.battery.PackHeat;
import org.amberyard.core.battery.PackLife;
import org.amberyard.core.battery.PackResistance;

/** An invented school bus, electric or with an engine, and invented runs for tests. */
public final class SampleBus {
    /** What its motor takes up. */
    public static final BrakeRecovery RECOVERY = new BrakeRecovery(100, 8, 1.3);
    /** Its electric driveline. */
    public static final DrivelineLoss DRIVELINE = DrivelineLoss.electric(0.88, 130, 50);
    /** Its cabin. */
    public static final Cabin CABIN = new Cabin(16, 0.2, 400, 0.003, 0.12, 3, 25, 2.5, 8);

    private SampleBus() {
    }

    /** A body of a mass with a driveline. */
    public static VehicleBody body(double massKg, DrivelineLoss driveline) {
        return new VehicleBody("C", massKg, 0.008, 4.5, 1.05, driveline, 2, CABIN);
    }

    /** A pack that keeps its temperature between 5 and 32 °C. */
    public static BatterySpec battery(double kwh, double coldLossPerK, double cycleLimit, double endShare, FadeLaw fade) {
        return new BatterySpec(kwh, 0.9, coldLossPerK, new PackResistance(0.04), new ChargeAcceptance(1, 15, -10, 0.9),
                new PackHeat(12, 5, 4, 32, 2), new PackLife(cycleLimit, endShare, 100, 1, fade));
    }

    /** The pack of most tests. */
    public static BatterySpec battery() {
        return battery(150, 0.004, 2000, 0.7, new LinearFade(0.012, 0.15 / 2000));
    }

    /** An electric bus. */
    public static ElectricSpec electric(Heater.Source source, BrakeRecovery recovery) {
        return electric(9500, source, recovery);
    }

    /** An electric bus of a mass. */
    public static ElectricSpec electric(double massKg, Heater.Source source, BrakeRecovery recovery) {
        return new ElectricSpec("E", body(massKg, DRIVELINE), recovery, new Heater(source, 20, 2.2, 0.05, 0.8), battery(),
                Optional.empty());
    }

    /** The electric bus of most tests. */
    public static ElectricSpec electric() {
        return electric(Heater.Source.RESISTANCE, RECOVERY);
    }

    /** A diesel bus. */
    public static EngineSpec diesel() {
        return new EngineSpec("D", body(9500, DrivelineLoss.mechanical(0.85)), FuelKind.DIESEL, 0.4, 1.8, 0.02, 0.2,
                new Heater(Heater.Source.FUEL_FIRED, 0, 1, 0, 0.8));
    }

    /** A run of 70 minutes and 25 km that is driven on so many days in January. */
    public static RunInput run(int daysInJanuary, double riders) {
        return run("AM", 390, 70, 25, 20, riders, 64, 60, inJanuary(daysInJanuary));
    }

    /** A run; dwell 20 s, back at the yard. */
    public static RunInput run(String name, double departureMin, double durationMin, double km, int stops, double riders,
            double topKmh, double climbM, List<Integer> days) {
        return new RunInput(name, departureMin, durationMin, km, stops, 20, riders, topKmh, climbM, true, false, days,
                Optional.empty());
    }

    /** So many days in January and none else. */
    public static List<Integer> inJanuary(int days) {
        List<Integer> year = new ArrayList<>(Collections.nCopies(Climate.MONTHS, 0));
        year.set(0, days);
        return year;
    }

    /** A climate in which every day is the same. */
    public static Climate climate(double elevationM, WeatherDay day) {
        return new Climate(elevationM, Collections.nCopies(Climate.MONTHS, new Climate.MonthWeather(day, day, day)));
    }

    /** Duty of a route with one vehicle. */
    public static DutyInput duty(VehicleSpec vehicle, WeatherDay day, RunInput... runs) {
        return new DutyInput(climate(200, day), new DriverStyle(0.7, 0.9, 1), 55,
                List.of(new RouteInput("R", "C", List.of(runs), EnergyModel.PHYSICS)), List.of(vehicle),
                new YardHabit(false, false, 17), List.of());
    }

    /** Use of a year of that route. */
    public static EnergyUse year(VehicleSpec vehicle, WeatherDay day, RunInput... runs) {
        return DutyTable.of(duty(vehicle, day, runs)).use(0, 0).orElseThrow().year();
    }
}
