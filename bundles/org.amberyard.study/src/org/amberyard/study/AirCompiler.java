package org.amberyard.study;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.amberyard.core.air.AirFactors;
import org.amberyard.core.air.AirInput;
import org.amberyard.core.air.EmissionCause;
import org.amberyard.core.air.EmissionRates;
import org.amberyard.core.air.EngineFactors;
import org.amberyard.core.air.Factor;
import org.amberyard.core.air.FuelFactors;
import org.amberyard.core.air.GrantTerms;
import org.amberyard.core.air.Pollutant;
import org.amberyard.core.air.WarmingPotentials;
import org.amberyard.core.air.WearFactors;
import org.amberyard.core.duty.FuelKind;
import org.amberyard.core.upkeep.TyreWear;
import org.amberyard.model.air.AirPackage;
import org.amberyard.model.air.EngineEmission;
import org.amberyard.model.air.FuelEmission;
import org.amberyard.model.air.WearEmission;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.study.EmissionFactors;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.model.vehicles.CombustionType;
import org.eclipse.emf.ecore.EAttribute;

/** Compiles what a study says of the air. */
final class AirCompiler {
    private static final Map<FuelKind, EAttribute> CO2 = Map.of(
            FuelKind.DIESEL, StudyPackage.Literals.EMISSION_FACTORS__DIESEL_CO2_KG_PER_L,
            FuelKind.GASOLINE, StudyPackage.Literals.EMISSION_FACTORS__GASOLINE_CO2_KG_PER_L,
            FuelKind.PROPANE, StudyPackage.Literals.EMISSION_FACTORS__PROPANE_CO2_KG_PER_L);
    private static final int ANY_YEAR = 9999;

    private final Study study;
    private final EmissionFactors factors;
    private final FactorReader plain;

    private AirCompiler(Study study) {
        this.study = study;
        this.factors = study.getEmissionFactors();
        this.plain = new FactorReader(factors, "");
    }

    static AirInput compile(Study study) {
        AirCompiler air = new AirCompiler(study);
        return new AirInput(air.factors(), air.engineModelYears(), HarmCompiler.social(air.factors),
                HarmCompiler.health(air.factors), new GrantTerms(air.factors.getRecoveryRate(),
                        air.factors.getRecoveryYears(), air.factors.getNoxWeight(), air.factors.getHcWeight(),
                        air.factors.getPmWeight()));
    }

    private AirFactors factors() {
        Map<FuelKind, FuelFactors> fuels = new EnumMap<>(FuelKind.class);
        CO2.keySet().forEach(fuel -> fuels.put(fuel, fuel(fuel)));
        GridCompiler grid = new GridCompiler(factors, study.getSettings().getBaseYear());
        List<EngineFactors> engines = factors.getEngineEmissions().stream().map(this::engines).toList();
        return new AirFactors(fuels, engines, otherEngines(), factors.getWearEmissions().stream().map(AirCompiler::wear).toList(),
                heater(fuels.get(FuelKind.DIESEL)), grid.chosen(), grid.other(), warming(), factors.isUpstream());
    }

    private FuelFactors fuel(FuelKind fuel) {
        Map<Pollutant, Factor> burnt = plain.known(Map.of(Pollutant.CO2, CO2.get(fuel)));
        Optional<FuelEmission> row = factors.getFuelEmissions().stream().filter(f -> VehicleCompiler.fuel(f.getFuel()) == fuel)
                .findFirst();
        row.map(AirCompiler::reader).flatMap(r -> r.factor(AirPackage.Literals.FUEL_EMISSION__SO2_GPER_L))
                .ifPresent(f -> burnt.put(Pollutant.SO2, f));
        Map<Pollutant, Factor> upstream = row.map(AirCompiler::reader).map(r -> r.known(Map.of(
                Pollutant.CO2E, AirPackage.Literals.FUEL_EMISSION__UPSTREAM_CO2E_KG_PER_L,
                Pollutant.NOX, AirPackage.Literals.FUEL_EMISSION__UPSTREAM_NOX_GPER_L,
                Pollutant.PM25, AirPackage.Literals.FUEL_EMISSION__UPSTREAM_PM25_GPER_L,
                Pollutant.SO2, AirPackage.Literals.FUEL_EMISSION__UPSTREAM_SO2_GPER_L))).orElse(Map.of());
        return new FuelFactors(EmissionRates.of(EmissionCause.FUEL_BURNT, burnt),
                EmissionRates.of(EmissionCause.FUEL_UPSTREAM, upstream));
    }

    private static FactorReader reader(FuelEmission row) {
        return new FactorReader(row, row.getRegion());
    }

    /** A heater burns diesel: what depends on the fuel alone is diesel's. */
    private EmissionRates heater(FuelFactors diesel) {
        Map<Pollutant, Factor> known = plain.known(Map.of(
                Pollutant.CH4, StudyPackage.Literals.EMISSION_FACTORS__HEATER_CH4_GPER_L,
                Pollutant.N2O, StudyPackage.Literals.EMISSION_FACTORS__HEATER_N2O_GPER_L,
                Pollutant.NOX, StudyPackage.Literals.EMISSION_FACTORS__HEATER_NOX_GPER_L,
                Pollutant.PM25, StudyPackage.Literals.EMISSION_FACTORS__HEATER_PM25_GPER_L,
                Pollutant.HC, StudyPackage.Literals.EMISSION_FACTORS__HEATER_HC_GPER_L,
                Pollutant.CO, StudyPackage.Literals.EMISSION_FACTORS__HEATER_CO_GPER_L));
        EmissionCause.FUEL_BURNT.pollutants().forEach(p -> diesel.burnt().factor(p).ifPresent(f -> known.put(p, f)));
        return EmissionRates.of(EmissionCause.HEATER_FUEL, known);
    }

    private EngineFactors engines(EngineEmission row) {
        FactorReader reader = new FactorReader(row, row.getRegion());
        Map<Pollutant, Factor> byDistance = anyEngine();
        byDistance.putAll(reader.known(Map.of(
                Pollutant.CH4, AirPackage.Literals.ENGINE_EMISSION__CH4_GPER_KM,
                Pollutant.N2O, AirPackage.Literals.ENGINE_EMISSION__N2O_GPER_KM,
                Pollutant.NOX, AirPackage.Literals.ENGINE_EMISSION__NOX_GPER_KM,
                Pollutant.PM25, AirPackage.Literals.ENGINE_EMISSION__PM25_GPER_KM,
                Pollutant.HC, AirPackage.Literals.ENGINE_EMISSION__HC_GPER_KM,
                Pollutant.CO, AirPackage.Literals.ENGINE_EMISSION__CO_GPER_KM)));
        EmissionRates idle = reader.rates(EmissionCause.IDLE_TIME, Map.of(
                Pollutant.NOX, AirPackage.Literals.ENGINE_EMISSION__IDLE_NOX_GPER_H,
                Pollutant.PM25, AirPackage.Literals.ENGINE_EMISSION__IDLE_PM25_GPER_H,
                Pollutant.HC, AirPackage.Literals.ENGINE_EMISSION__IDLE_HC_GPER_H,
                Pollutant.CO, AirPackage.Literals.ENGINE_EMISSION__IDLE_CO_GPER_H));
        return new EngineFactors(ElementNames.of(row), VehicleCompiler.fuel(row.getFuel()), letters(row.getBodyTypes()),
                row.getFirstModelYear(), row.getLastModelYear(), EmissionRates.of(EmissionCause.DISTANCE, byDistance), idle);
    }

    private Map<Pollutant, Factor> anyEngine() {
        return plain.known(Map.of(Pollutant.CH4, StudyPackage.Literals.EMISSION_FACTORS__ENGINE_CH4_GPER_KM,
                Pollutant.N2O, StudyPackage.Literals.EMISSION_FACTORS__ENGINE_N2O_GPER_KM));
    }

    private EngineFactors otherEngines() {
        return new EngineFactors("other engines", FuelKind.DIESEL, "", 0, ANY_YEAR,
                EmissionRates.of(EmissionCause.DISTANCE, anyEngine()), EmissionRates.of(EmissionCause.IDLE_TIME, Map.of()));
    }

    private static WearFactors wear(WearEmission row) {
        FactorReader reader = new FactorReader(row, row.getRegion());
        return new WearFactors(ElementNames.of(row), letters(row.getBodyTypes()),
                reader.rates(EmissionCause.WEAR, Map.of(Pollutant.PM25, AirPackage.Literals.WEAR_EMISSION__BRAKE_PM25_GPER_KM)),
                row.getBrakeKwhPerKm(),
                reader.rates(EmissionCause.WEAR, Map.of(Pollutant.PM25, AirPackage.Literals.WEAR_EMISSION__TYRE_PM25_GPER_KM)),
                row.getTyreReferenceKg() > 0 ? Optional.of(new TyreWear(row.getTyreReferenceKg())) : Optional.empty());
    }

    private static String letters(String bodyTypes) {
        return bodyTypes == null ? "" : bodyTypes;
    }

    private WarmingPotentials warming() {
        return switch (factors.getWarmingSet()) {
            case AR4 -> WarmingPotentials.AR4;
            case AR5 -> WarmingPotentials.AR5;
            case AR6 -> WarmingPotentials.AR6;
            case OWN -> WarmingPotentials.own(factors.getGwpCh4(), factors.getGwpN2o());
        };
    }

    /** The chassis stands in where the model year of an engine was not entered. */
    private Map<String, Integer> engineModelYears() {
        Map<String, Integer> years = new HashMap<>();
        for (Bus bus : study.getBuses()) {
            if (bus.getType() instanceof CombustionType) {
                years.put(bus.getName(), bus.getEngineModelYear() > 0 ? bus.getEngineModelYear() : bus.getModelYear());
            }
        }
        return years;
    }
}
