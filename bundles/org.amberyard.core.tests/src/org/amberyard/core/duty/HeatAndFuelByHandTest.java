package org.amberyard.core.duty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Forces, heat and fuel of an invented bus, counted by hand. */
class HeatAndFuelByHandTest {
    private static final double RIDERS = 25;
    /** Of 16 °C, with 0.2 kW/K of shell, 400 m³/h of air and 0.003 kWh/K at a stop. */
    private static final Cabin CABIN = SampleBus.CABIN;
    private static final double AIR_KW_PER_K = 400 * 1.2 * 1.006 / 3600;

    @Test
    void theForcesOfTheRoadAddUpByTheirEquation() {
        RoadLoad bus = new RoadLoad(10_000, 0.008, 4.5, 1.05, 1.2);
        assertEquals(784.532, bus.rollingN(1), 1e-9);
        assertEquals(4903.325, bus.climbingN(0.05), 1e-9);
        assertEquals(1080, bus.dragN(20), 1e-9);
        assertEquals(5250, bus.inertiaN(0.5), 1e-9);
        assertEquals(-10_500, bus.inertiaN(-1), 1e-9);
    }

    /** 1,000 N at 10 m/s over an efficiency of 0.8 are 12.5 kW. */
    @Test
    void aMechanicalDrivelineLosesAShare() {
        assertEquals(2500, DrivelineLoss.mechanical(0.8).lossW(10, 1000), 1e-9);
        assertEquals(0, DrivelineLoss.mechanical(0.8).lossW(10, 0), 0);
        assertEquals(8000 / 10.0 / (1 - 0.25), DrivelineLoss.mechanical(0.8).brakingN(10, 8000), 1e-9);
    }

    @Test
    void theCabinGainsFromRidersAndSunAndLosesByAirAndDoors() {
        assertEquals(0.07 * 25 + 3 * 0.3, CABIN.gainsKw(25, 300), 1e-12);
        assertEquals(0.2 + AIR_KW_PER_K + 0.003 * 20, CABIN.driving(20).conductanceKwPerK(), 1e-12);
        assertEquals(0.2 * 26 - 1.75, CABIN.holdingKw(CABIN.closed(), -10, 1.75), 1e-12);
    }

    @Test
    void aBodyThatLosesNothingKeepsWhatComesIn() {
        HeatBalance tight = new HeatBalance(0.12, 0);
        assertEquals(11, tight.endC(10, -10, 1.2, 0.1), 1e-12);
        HeatBalance.Thermostat limits = new HeatBalance.Thermostat(16, 25, 20, 15);
        assertEquals(0.12 * 6 / 0.5, tight.held(10, -10, 0, 0.5, limits).heatKw(), 1e-12);
        assertEquals(10 * Math.exp(-1), new HeatBalance(0.12, 0.3).endC(10, 0, 0, 0.4), 1e-12);
        assertEquals(0, new HeatBalance(0.12, 0.3).endC(0, -10, 3, 5), 1e-12, "3 kW hold ten degrees");
    }

    @Test
    void aHeaterBringsWhatItsPowerAllows() {
        Heater pump = new Heater(Heater.Source.HEAT_PUMP, 20, 2.2, 0.05, 0.8);
        assertEquals(11, pump.outputKw(5, 0), 1e-12);
        assertEquals(20, pump.outputKw(50, 0), 1e-12);
        assertEquals(0, pump.outputKw(-1, 0), 0);
        assertEquals(10 / 1.7, pump.electricKwh(10, -10), 1e-12);
        Heater burner = pump.fuelFired();
        assertEquals(20, burner.outputKw(0, -10), 1e-12, "fuel needs no power");
        assertEquals(10 / 0.8 / FuelKind.DIESEL.kwhPerL(), burner.fuelL(10), 1e-12);
        assertEquals(0, burner.electricKwh(10, -10), 0);
    }

    private static EngineSpec diesel(double coolantShare, double heaterKw) {
        return new EngineSpec("D", SampleBus.body(9500, DrivelineLoss.mechanical(0.85)), FuelKind.DIESEL, 0.4, 1.8, 0.02, coolantShare,
                new Heater(Heater.Source.FUEL_FIRED, heaterKw, 1, 0, 0.8));
    }

    private static EnergyUse driven(EngineSpec bus, double airC) {
        return SampleBus.year(bus, WeatherDay.ofExtremes(airC, airC, new double[WeatherDay.HOURS]), SampleBus.run(1, RIDERS));
    }

    /** Power that brings the cabin from the cold of the air to 16 °C by the end of the run. */
    private static double neededKw(EnergyUse use, double airC) {
        double lost = 0.2 + AIR_KW_PER_K + 0.003 * 20 / use.hours();
        double gone = 1 - Math.exp(-lost * use.hours() / 0.12);
        return lost * (16 - airC) / gone - 0.07 * RIDERS;
    }

    @Test
    void fuelIsThatOfRunningAndOfTheWorkOfTheCrankshaft() {
        EnergyUse use = driven(diesel(0.2, 0), 18);
        assertEquals(1.8 * use.hours() + use.drawnKwh() / 0.4 / FuelKind.DIESEL.kwhPerL(), use.fuelL(), 1e-9);
        assertEquals(2 * use.hours(), use.causes().auxiliaryKwh(), 1e-9, "2 kW while it runs");
        assertEquals(0, use.heaterFuelL(), 0);
        assertEquals(0, use.causes().coolingKwh(), 0, "between 16 and 25 °C nothing is done");
    }

    @Test
    void theCoolantHeatsFirstAndTheHeaterBringsTheRest() {
        double airC = -20;
        EnergyUse alone = driven(diesel(0, 60), airC);
        assertEquals(neededKw(alone, airC) * alone.hours() / 0.8 / FuelKind.DIESEL.kwhPerL(), alone.heaterFuelL(), 1e-9);
        assertEquals(0, alone.heatShortKwh(), 0);
        EnergyUse both = driven(diesel(0.05, 60), airC);
        double coolantKwh = 0.05 * both.fuelL() * FuelKind.DIESEL.kwhPerL();
        assertEquals((neededKw(both, airC) * both.hours() - coolantKwh) / 0.8 / FuelKind.DIESEL.kwhPerL(), both.heaterFuelL(), 1e-9);
        assertTrue(both.heaterFuelL() > 0 && both.heaterFuelL() < alone.heaterFuelL());
        assertEquals(0, driven(diesel(0.9, 60), airC).heaterFuelL(), 0, "the coolant is enough");
    }

    /** What is short is told of holding 16 °C, not of warming up: the loss to the air less riders, coolant and heater. */
    @Test
    void heatThatNobodyBringsIsTold() {
        double airC = -20;
        EnergyUse use = driven(diesel(0.02, 3), airC);
        double lostKw = (0.2 + AIR_KW_PER_K + 0.003 * 20 / use.hours()) * (16 - airC);
        double coolantKwh = 0.02 * use.fuelL() * FuelKind.DIESEL.kwhPerL();
        assertEquals((lostKw - 0.07 * RIDERS - 3) * use.hours() - coolantKwh, use.heatShortKwh(), 1e-9);
        assertEquals(3 * use.hours() / 0.8 / FuelKind.DIESEL.kwhPerL(), use.heaterFuelL(), 1e-9, "the heater runs all the time");
    }

    /** A cabin of 30 °C is cooled to 25 °C; each kilowatt of power takes away two and a half. */
    @Test
    void coolingLoadsTheEngine() {
        EnergyUse use = driven(diesel(0.2, 0), 30);
        double lost = 0.2 + AIR_KW_PER_K + 0.003 * 20 / use.hours();
        double gone = 1 - Math.exp(-lost * use.hours() / 0.12);
        double coldKw = 0.07 * RIDERS - lost * (30 + (25 - 30) / gone - 30);
        assertEquals(coldKw * use.hours() / 2.5, use.causes().coolingKwh(), 1e-9);
        assertTrue(use.fuelL() > driven(diesel(0.2, 0), 18).fuelL());
    }
}
