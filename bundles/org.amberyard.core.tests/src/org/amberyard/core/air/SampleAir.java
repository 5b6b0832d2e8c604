package org.amberyard.core.air;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.amberyard.core.duty.FuelKind;
import org.amberyard.core.why.InputRef;

/** Invented emission factors for tests. */
public final class SampleAir {
    /** Diesel: CO2, kg/L. */
    public static final double CO2_KG_PER_L = 2.6972;
    /** Power plants of the base year, kg CO2e/kWh. */
    public static final double GRID_KG_PER_KWH = 0.35;

    private SampleAir() {
    }

    /** Greenhouse gas alone: fuel by diesel, methane and nitrous oxide by distance, a grid that gets cleaner by 2 % a year. */
    public static AirInput greenhouseGas() {
        return of(new AirFactors(Map.of(FuelKind.DIESEL, diesel()), List.of(), group("other engines", "", 0, 9999, Map.of()),
                List.of(), heater(), grid(GridBasis.AVERAGE, GRID_KG_PER_KWH), Optional.empty(), WarmingPotentials.AR5, false));
    }

    /** All factors of buses and grid, with groups of old and new engines, and with upstream. */
    public static AirInput whole() {
        Map<Pollutant, Double> old = Map.of(Pollutant.NOX, 6.0, Pollutant.PM25, 0.2, Pollutant.HC, 0.3, Pollutant.CO, 1.5);
        Map<Pollutant, Double> clean = Map.of(Pollutant.NOX, 0.8, Pollutant.PM25, 0.01, Pollutant.HC, 0.05, Pollutant.CO, 0.4);
        WearFactors dust = new WearFactors("all", "", rates(EmissionCause.WEAR, FactorUnit.G_PER_KM, Map.of(Pollutant.PM25, 0.013)),
                0.33, rates(EmissionCause.WEAR, FactorUnit.G_PER_KM, Map.of(Pollutant.PM25, 0.012)), Optional.empty());
        return of(new AirFactors(Map.of(FuelKind.DIESEL, diesel()),
                List.of(group("diesel to 2009", "", 1960, 2009, old), group("diesel from 2010", "", 2010, 2099, clean)),
                group("other engines", "", 0, 9999, Map.of()), List.of(dust), heater(), grid(GridBasis.AVERAGE, GRID_KG_PER_KWH),
                Optional.of(grid(GridBasis.MARGINAL, 0.6)), WarmingPotentials.AR5, true));
    }

    /** The terms of an invented programme with factors. */
    public static AirInput of(AirFactors factors) {
        return new AirInput(factors, Map.of(), SocialCosts.NONE, HealthCosts.NONE, new GrantTerms(0.02, 10, 1, 1, 20));
    }

    private static FuelFactors diesel() {
        return new FuelFactors(new EmissionRates(Map.of(
                Pollutant.CO2, Optional.of(factor(CO2_KG_PER_L, FactorUnit.KG_PER_L, FactorQuality.PUBLISHED)),
                Pollutant.SO2, Optional.of(factor(0.025, FactorUnit.G_PER_L, FactorQuality.ASSUMED)))),
                rates(EmissionCause.FUEL_UPSTREAM, FactorUnit.KG_PER_L, Map.of(Pollutant.CO2E, 0.6)));
    }

    private static EmissionRates heater() {
        return new EmissionRates(Map.of(Pollutant.CO2,
                Optional.of(factor(CO2_KG_PER_L, FactorUnit.KG_PER_L, FactorQuality.PUBLISHED)), Pollutant.NOX,
                Optional.of(factor(2.4, FactorUnit.G_PER_L, FactorQuality.ASSUMED))));
    }

    /** A group of diesel engines; idling for an hour emits as much as 8 km. */
    public static EngineFactors group(String name, String bodyTypes, int first, int last, Map<Pollutant, Double> gPerKm) {
        Map<Pollutant, Double> all = new EnumMap<>(Pollutant.class);
        all.putAll(Map.of(Pollutant.CH4, 0.0059, Pollutant.N2O, 0.02678));
        all.putAll(gPerKm);
        Map<Pollutant, Double> idle = new EnumMap<>(Pollutant.class);
        gPerKm.forEach((pollutant, g) -> idle.put(pollutant, 8 * g));
        return new EngineFactors(name, FuelKind.DIESEL, bodyTypes, first, last,
                rates(EmissionCause.DISTANCE, FactorUnit.G_PER_KM, all), rates(EmissionCause.IDLE_TIME, FactorUnit.G_PER_H, idle));
    }

    /** A grid with a published CO2e that falls by 2 % a year, and 5 % of line loss. */
    public static GridPath grid(GridBasis basis, double kgPerKwh) {
        EmissionRates rates = rates(EmissionCause.GENERATION, FactorUnit.KG_PER_KWH, Map.of(Pollutant.CO2E, kgPerKwh));
        return new GridPath("sample", basis, List.of(new GridPath.Point(0, rates)), -0.02, 0.05);
    }

    /** Rates of a cause from plain figures, published. */
    public static EmissionRates rates(EmissionCause cause, FactorUnit unit, Map<Pollutant, Double> values) {
        Map<Pollutant, Factor> known = new EnumMap<>(Pollutant.class);
        values.forEach((pollutant, value) -> known.put(pollutant, factor(value, unit, FactorQuality.PUBLISHED)));
        return EmissionRates.of(cause, known);
    }

    /** A factor of a quality. */
    public static Factor factor(double value, FactorUnit unit, FactorQuality quality) {
        return new Factor(value, unit, new FactorOrigin(new InputRef("Sample", "", unit.symbol()), "sample", quality,
                "invented", "2026-01-01"));
    }
}
