package org.amberyard.testsupport;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.amberyard.core.air.AirFactors;
import org.amberyard.core.air.AirInput;
import org.amberyard.core.air.EmissionCause;
import org.amberyard.core.air.EmissionRates;
import org.amberyard.core.air.EngineFactors;
import org.amberyard.core.air.Factor;
import org.amberyard.core.air.FactorOrigin;
import org.amberyard.core.air.FactorQuality;
import org.amberyard.core.air.FactorUnit;
import org.amberyard.core.air.FuelFactors;
import org.amberyard.core.air.GrantTerms;
import org.amberyard.core.air.GridBasis;
import org.amberyard.core.air.GridPath;
import org.amberyard.core.air.HealthCosts;
import org.amberyard.core.air.Pollutant;
import org.amberyard.core.air.SocialCosts;
import org.amberyard.core.air.WarmingPotentials;
import org.amberyard.core.air.WearFactors;
import org.amberyard.core.duty.FuelKind;
import org.amberyard.core.why.InputRef;

/** Invented emission factors; all are said to be published, so that nothing stands in. */
public final class SampleAir {
    private final FactorQuality engineQuality;

    private SampleAir(FactorQuality engineQuality) {
        this.engineQuality = engineQuality;
    }

    /** Factors of engines, dust, heaters and a grid that gets cleaner, with a social cost. */
    public static AirInput whole() {
        return new SampleAir(FactorQuality.PUBLISHED).input();
    }

    /** The same with factors of engines that only stand in. */
    public static AirInput placeholders() {
        return new SampleAir(FactorQuality.PLACEHOLDER).input();
    }

    private AirInput input() {
        EmissionRates dust = rates(EmissionCause.WEAR, FactorUnit.G_PER_KM, Map.of(Pollutant.PM25, 0.013));
        AirFactors factors = new AirFactors(Map.of(FuelKind.DIESEL, diesel()), List.of(engines("diesel to 2019", 1960, 2019, 5),
                engines("diesel from 2020", 2020, 2100, 1)), engines("other engines", 0, 9999, 1),
                List.of(new WearFactors("all bodies", "", dust, 0.33, dust, Optional.empty())), heater(),
                grid(GridBasis.AVERAGE, 0.35), Optional.of(grid(GridBasis.MARGINAL, 0.6)), WarmingPotentials.AR5, true);
        return new AirInput(factors, Map.of(), social(), HealthCosts.NONE, new GrantTerms(0.02, 10, 1, 1, 20));
    }

    private SocialCosts social() {
        FactorOrigin origin = origin("costPerT", FactorQuality.PUBLISHED);
        return new SocialCosts(List.of(new SocialCosts.Point(Pollutant.CO2, 2020, 0.02, 190, origin),
                new SocialCosts.Point(Pollutant.CO2, 2040, 0.02, 270, origin),
                new SocialCosts.Point(Pollutant.CH4, 2020, 0.02, 1600, origin),
                new SocialCosts.Point(Pollutant.N2O, 2020, 0.02, 54_000, origin)), 0.02, 1);
    }

    private FuelFactors diesel() {
        Map<Pollutant, Factor> burnt = Map.of(Pollutant.CO2, factor(2.7, FactorUnit.KG_PER_L, FactorQuality.PUBLISHED),
                Pollutant.SO2, factor(0.025, FactorUnit.G_PER_L, FactorQuality.PUBLISHED));
        return new FuelFactors(EmissionRates.of(EmissionCause.FUEL_BURNT, burnt),
                rates(EmissionCause.FUEL_UPSTREAM, FactorUnit.KG_PER_L, Map.of(Pollutant.CO2E, 0.6)));
    }

    private EmissionRates heater() {
        Map<Pollutant, Factor> known = new EnumMap<>(Pollutant.class);
        EmissionCause.HEATER_FUEL.pollutants().forEach(p -> known.put(p, factor(0.1, FactorUnit.G_PER_L, FactorQuality.PUBLISHED)));
        known.put(Pollutant.CO2, factor(2.7, FactorUnit.KG_PER_L, FactorQuality.PUBLISHED));
        return EmissionRates.of(EmissionCause.HEATER_FUEL, known);
    }

    private EngineFactors engines(String name, int first, int last, double times) {
        Map<Pollutant, Factor> byKm = new EnumMap<>(Map.of(
                Pollutant.CH4, factor(0.003, FactorUnit.G_PER_KM, FactorQuality.PUBLISHED),
                Pollutant.N2O, factor(0.02, FactorUnit.G_PER_KM, FactorQuality.PUBLISHED)));
        Map<Pollutant, Factor> byHour = new EnumMap<>(Pollutant.class);
        Map.of(Pollutant.NOX, 0.9, Pollutant.PM25, 0.01, Pollutant.HC, 0.06, Pollutant.CO, 0.4).forEach((pollutant, g) -> {
            byKm.put(pollutant, factor(times * g, FactorUnit.G_PER_KM, engineQuality));
            byHour.put(pollutant, factor(8 * times * g, FactorUnit.G_PER_H, engineQuality));
        });
        return new EngineFactors(name, FuelKind.DIESEL, "", first, last, EmissionRates.of(EmissionCause.DISTANCE, byKm),
                EmissionRates.of(EmissionCause.IDLE_TIME, byHour));
    }

    private GridPath grid(GridBasis basis, double kgPerKwh) {
        EmissionRates rates = rates(EmissionCause.GENERATION, FactorUnit.KG_PER_KWH, Map.of(Pollutant.CO2E, kgPerKwh));
        return new GridPath("sample", basis, List.of(new GridPath.Point(0, rates)), -0.04, 0.05);
    }

    private EmissionRates rates(EmissionCause cause, FactorUnit unit, Map<Pollutant, Double> values) {
        Map<Pollutant, Factor> known = new EnumMap<>(Pollutant.class);
        values.forEach((pollutant, value) -> known.put(pollutant, factor(value, unit, FactorQuality.PUBLISHED)));
        return EmissionRates.of(cause, known);
    }

    private static Factor factor(double value, FactorUnit unit, FactorQuality quality) {
        return new Factor(value, unit, origin(unit.symbol(), quality));
    }

    private static FactorOrigin origin(String field, FactorQuality quality) {
        return new FactorOrigin(new InputRef("Sample", "", field), "sample", quality, "invented", "2026-01-01");
    }
}
