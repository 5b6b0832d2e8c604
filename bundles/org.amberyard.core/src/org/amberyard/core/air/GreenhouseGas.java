package org.amberyard.core.air;

import java.util.Map;
import org.amberyard.core.duty.FuelKind;

/**
 * Greenhouse gas of fuels and grid as carbon dioxide equivalent.
 *
 * @param co2KgPerL carbon dioxide per volume of fuel burnt, kg/L
 * @param engineCh4GPerKm methane from the exhaust, g/km
 * @param engineN2oGPerKm nitrous oxide from the exhaust, g/km
 * @param gwpCh4 warming potential of methane over 100 years
 * @param gwpN2o warming potential of nitrous oxide over 100 years
 * @param gridKgPerKwh grid factor at the power plants in the base year, kg/kWh
 * @param gridTrend yearly change of that factor
 * @param lineLossShare share of the generated energy lost before the meter
 */
public record GreenhouseGas(Map<FuelKind, Double> co2KgPerL, double engineCh4GPerKm, double engineN2oGPerKm,
        double gwpCh4, double gwpN2o, double gridKgPerKwh, double gridTrend, double lineLossShare) {

    private static final double G_PER_KG = 1000;

    public GreenhouseGas {
        co2KgPerL = Map.copyOf(co2KgPerL);
    }

    /** Tailpipe greenhouse gas of an engine bus, kg CO2e. */
    public double tailpipeKg(FuelKind fuel, double fuelL, double km) {
        double traceGasKg = km * (engineCh4GPerKm * gwpCh4 + engineN2oGPerKm * gwpN2o) / G_PER_KG;
        return fuelL * co2KgPerL.get(fuel) + traceGasKg;
    }

    /** Greenhouse gas of a diesel-fired heater, kg CO2. */
    public double heaterKg(double heaterFuelL) {
        return heaterFuelL * co2KgPerL.get(FuelKind.DIESEL);
    }

    /** Greenhouse gas at the power plants for energy at the meter in a year of the study, kg CO2e. */
    public double gridKg(double meterKwh, int year) {
        return meterKwh / (1 - lineLossShare) * gridKgPerKwh * Math.pow(1 + gridTrend, year);
    }
}
