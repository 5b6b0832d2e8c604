package org.amberyard.core.duty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.battery.CapacityFade;
import org.junit.jupiter.api.Test;

class DutyTableTest {
    private static final Cabin CABIN = new Cabin(16, 0.3, 0.003, 0.1, 22, 0.2, 8);
    private static final VehicleBody BODY = new VehicleBody("C", 9500, 0.008, 4.5, 1.05, 0.85, 2, CABIN);
    private static final EngineSpec DIESEL = new EngineSpec("D", BODY, FuelKind.DIESEL, 0.4, 1.8, 0.02);

    private static ElectricSpec electric(Heater.Source source, BrakeRecovery recovery) {
        BatterySpec battery = new BatterySpec(150, 0.9, 0.004, 2000, 0.7, new CapacityFade(0.01, 0));
        return new ElectricSpec("E", BODY, recovery, new Heater(source, 20, 2.2, 0.05, 0.8), battery, Optional.empty());
    }

    private static final BrakeRecovery RECOVERY = new BrakeRecovery(100, 8, 0.8);

    private static RunInput run(int daysInJanuary, double riders) {
        List<Integer> days = new ArrayList<>(Collections.nCopies(12, 0));
        days.set(0, daysInJanuary);
        return new RunInput("AM", 390, 70, 25, 20, 20, riders, 64, 60, true, false, days);
    }

    private static EnergyUse year(VehicleSpec vehicle, double lowC, double highC, RunInput run) {
        DayTemperatures day = new DayTemperatures(lowC, highC);
        Climate climate = new Climate(200, Collections.nCopies(12, new Climate.MonthWeather(day, day, day)));
        DutyInput input = new DutyInput(climate, new DriverStyle(0.7, 0.9), 55,
                List.of(new RouteInput("R", "C", List.of(run), EnergyModel.PHYSICS)), List.of(vehicle), List.of());
        return DutyTable.of(input).use(0, 0).orElseThrow().year();
    }

    @Test
    void aYearIsDaysTimesADay() {
        EnergyUse one = year(electric(Heater.Source.RESISTANCE, RECOVERY), 0, 10, run(1, 20));
        EnergyUse twenty = year(electric(Heater.Source.RESISTANCE, RECOVERY), 0, 10, run(20, 20));
        assertEquals(20 * one.batteryKwh(), twenty.batteryKwh(), 1e-9);
        assertEquals(500, twenty.km(), 1e-9);
    }

    @Test
    void coldTakesHeatPerHourAndDenserAir() {
        VehicleSpec bus = electric(Heater.Source.RESISTANCE, RECOVERY);
        EnergyUse cold = year(bus, -20, -20, run(1, 20));
        EnergyUse mild = year(bus, 16, 16, run(1, 20));
        assertEquals(0, mild.heatKwh(), 0);
        double lost = 36 * (0.3 * cold.hours() + 0.003 * 20 + 0.1) - 0.07 * 20 * cold.hours();
        assertEquals(lost, cold.heatKwh(), 1e-9);
        assertTrue(cold.tractionKwh() > mild.tractionKwh());
    }

    @Test
    void heatPumpDrawsLessAndFuelFiredNothing() {
        double resistance = year(electric(Heater.Source.RESISTANCE, RECOVERY), -5, -5, run(1, 20)).heatKwh();
        EnergyUse pump = year(electric(Heater.Source.HEAT_PUMP, RECOVERY), -5, -5, run(1, 20));
        EnergyUse fired = year(electric(Heater.Source.FUEL_FIRED, RECOVERY), -5, -5, run(1, 20));
        assertEquals(resistance / (2.2 - 5 * 0.05), pump.heatKwh(), 1e-9);
        assertEquals(0, fired.heatKwh(), 0);
        assertEquals(resistance / 0.8 / FuelKind.DIESEL.kwhPerL(), fired.heaterFuelL(), 1e-9);
    }

    @Test
    void heaterBringsNoMoreThanItCan() {
        EnergyUse deep = year(electric(Heater.Source.RESISTANCE, RECOVERY), -60, -60, run(1, 0));
        assertEquals(20 * deep.hours(), deep.heatKwh(), 1e-9);
    }

    @Test
    void hotDaysTakeCoolingUpToItsLimit() {
        VehicleSpec bus = electric(Heater.Source.RESISTANCE, RECOVERY);
        assertEquals(0.2 * 10, coolingKw(year(bus, 32, 32, run(1, 20))), 1e-9);
        assertEquals(8, coolingKw(year(bus, 80, 80, run(1, 20))), 1e-9);
    }

    private static double coolingKw(EnergyUse use) {
        return use.coolingKwh() / use.hours();
    }

    @Test
    void recoveryGivesBackItsEfficiencyOfWhatItTakes() {
        EnergyUse none = year(electric(Heater.Source.RESISTANCE, BrakeRecovery.NONE), 16, 16, run(1, 20));
        EnergyUse some = year(electric(Heater.Source.RESISTANCE, RECOVERY), 16, 16, run(1, 20));
        assertEquals(none.tractionKwh(), some.tractionKwh(), 1e-12);
        assertEquals(0.8 * (none.frictionBrakeKwh() - some.frictionBrakeKwh()), some.recoveredKwh(), 1e-9);
        assertEquals(none.batteryKwh() - some.recoveredKwh(), some.batteryKwh(), 1e-9);
    }

    @Test
    void fuelIsIdleRatePlusWork() {
        EnergyUse use = year(DIESEL, 16, 16, run(1, 20));
        double shaft = use.tractionKwh() + use.auxiliaryKwh() + use.coolingKwh();
        assertEquals(1.8 * use.hours() + shaft / 0.4 / FuelKind.DIESEL.kwhPerL(), use.fuelL(), 1e-9);
        double milesPerGallon = use.km() / 1.609344 / (use.fuelL() / 3.785411784);
        assertTrue(milesPerGallon > 5 && milesPerGallon < 9, "a school bus goes 6 to 8 mpg (from memory): " + milesPerGallon);
    }

    @Test
    void ridersWeighAndWarm() {
        VehicleSpec bus = electric(Heater.Source.RESISTANCE, RECOVERY);
        EnergyUse empty = year(bus, -5, -5, run(1, 0));
        EnergyUse full = year(bus, -5, -5, run(1, 60));
        assertTrue(full.tractionKwh() > empty.tractionKwh());
        assertTrue(full.heatKwh() < empty.heatKwh());
    }

    @Test
    void bodiesThatDoNotFitAreLeftOut() {
        Climate climate = new Climate(0, Collections.nCopies(12, new Climate.MonthWeather(new DayTemperatures(0, 0),
                new DayTemperatures(0, 0), new DayTemperatures(0, 0))));
        DutyInput input = new DutyInput(climate, new DriverStyle(0.7, 0.9), 55,
                List.of(new RouteInput("R", "A", List.of(run(1, 2)), EnergyModel.PHYSICS)), List.of(DIESEL), List.of());
        assertTrue(DutyTable.of(input).use(0, 0).isEmpty());
        assertEquals(EnergyUse.ZERO, DutyTable.of(input).perKm(0));
    }

    @Test
    void dayIsColdestAtSixAndWarmestAtThree() {
        DayTemperatures day = new DayTemperatures(-10, 4);
        assertEquals(-10, day.atHour(6), 1e-12);
        assertEquals(4, day.atHour(15), 1e-12);
        assertEquals(-3, day.atHour(10.5), 1e-12);
        assertEquals(day.atHour(0), day.atHour(24), 1e-12);
    }

    @Test
    void extendedYearDaysAreDaysOfTheirOwn() {
        RunInput summer = new RunInput("S", 480, 60, 10, 10, 20, 5, 64, 0, true, true, run(4, 2).daysByMonth());
        DayTemperatures day = new DayTemperatures(10, 20);
        Climate climate = new Climate(0, Collections.nCopies(12, new Climate.MonthWeather(day, day, day)));
        DutyInput input = new DutyInput(climate, new DriverStyle(0.7, 0.9), 55,
                List.of(new RouteInput("R", "C", List.of(run(4, 2), summer), EnergyModel.PHYSICS)), List.of(DIESEL), List.of());
        RouteUse use = DutyTable.of(input).use(0, 0).orElseThrow();
        assertEquals(List.of("AM", "S"), use.days(0, true).map(d -> d.legs().get(0).name()).toList());
        assertEquals(0, use.days(1, true).count());
        assertEquals(4 * 25 + 4 * 10, use.year().km(), 1e-9);
    }

    @Test
    void heatThatTheHeaterCannotBringIsCounted() {
        EnergyUse deep = year(electric(Heater.Source.RESISTANCE, RECOVERY), -60, -60, run(1, 0));
        double asked = 76 * (0.3 * deep.hours() + 0.003 * 20 + 0.1);
        assertEquals(asked - deep.heatKwh(), deep.heatShortKwh(), 1e-9);
    }
}
