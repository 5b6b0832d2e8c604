package org.amberyard.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.amberyard.core.air.AirInput;
import org.amberyard.core.air.EngineFactors;
import org.amberyard.core.air.Factor;
import org.amberyard.core.air.FactorQuality;
import org.amberyard.core.air.GridBasis;
import org.amberyard.core.air.Pollutant;
import org.amberyard.core.air.WarmingPotentials;
import org.amberyard.core.duty.FuelKind;
import org.amberyard.core.why.InputRef;
import org.amberyard.model.air.AirFactory;
import org.amberyard.model.air.EngineEmission;
import org.amberyard.model.air.FuelEmission;
import org.amberyard.model.air.Gas;
import org.amberyard.model.air.GridEmission;
import org.amberyard.model.air.SocialCost;
import org.amberyard.model.air.WarmingSet;
import org.amberyard.model.common.CommonFactory;
import org.amberyard.model.common.Quality;
import org.amberyard.model.common.SourceNote;
import org.amberyard.model.common.Sourced;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.fleet.FleetFactory;
import org.amberyard.model.io.StudyDefaults;
import org.amberyard.model.study.EmissionFactors;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.VehiclesFactory;
import org.junit.jupiter.api.Test;

class AirCompilerTest {
    private final Study study = StudyDefaults.create();
    private final EmissionFactors factors = study.getEmissionFactors();

    private AirInput compiled() {
        return AirCompiler.compile(study);
    }

    private static void note(Sourced row, String field, Quality quality, String citation, String date) {
        SourceNote note = CommonFactory.eINSTANCE.createSourceNote();
        note.setField(field);
        note.setQuality(quality);
        note.setCitation(citation);
        note.setDate(date);
        row.getSources().add(note);
    }

    private GridEmission grid(String region, org.amberyard.model.air.GridBasis basis, int year, double co2eKgPerKwh) {
        GridEmission row = AirFactory.eINSTANCE.createGridEmission();
        row.setRegion(region);
        row.setBasis(basis);
        row.setYear(year);
        row.setCo2eKgPerKwh(co2eKgPerKwh);
        factors.getGridEmissions().add(row);
        return row;
    }

    @Test
    void defaultsAreCitedAndPlaceholdersAmongThemMarked() {
        Factor co2 = compiled().factors().fuels().get(FuelKind.DIESEL).burnt().factor(Pollutant.CO2).orElseThrow();
        assertEquals(10.21 / 3.785411784, co2.value(), 1e-12);
        assertEquals(FactorQuality.DEFAULT, co2.origin().quality());
        assertTrue(co2.origin().citation().contains("Emission Factors Hub, 15 January 2025, Table 2"));
        assertFalse(co2.placeholder());
        assertTrue(compiled().factors().heaterPerL().factor(Pollutant.NOX).orElseThrow().placeholder());
    }

    @Test
    void aValueThatNobodyHasSourcedIsNotForSubmission() {
        factors.setDieselCo2KgPerL(2.65);
        Factor co2 = compiled().factors().fuels().get(FuelKind.DIESEL).burnt().factor(Pollutant.CO2).orElseThrow();
        assertEquals(FactorQuality.UNKNOWN, co2.origin().quality());
        assertTrue(co2.placeholder());
        note(factors, "dieselCo2KgPerL", Quality.MEASURED, "Fuel analysis", "2026-05-01");
        assertFalse(compiled().factors().fuels().get(FuelKind.DIESEL).burnt().factor(Pollutant.CO2).orElseThrow().placeholder());
    }

    @Test
    void aGroupOfEnginesKeepsItsSourcesFieldByField() {
        EngineEmission row = AirFactory.eINSTANCE.createEngineEmission();
        row.setFirstModelYear(2007);
        row.setLastModelYear(2009);
        row.setRegion("US");
        row.setNoxGPerKm(3.0);
        row.setIdleNoxGPerH(50.0);
        row.setCh4GPerKm(0.01);
        note(row, "noxGPerKm", Quality.PUBLISHED, "Agency, table 1", "2024");
        note(row, "*", Quality.PLACEHOLDER, "stands in", "");
        factors.getEngineEmissions().add(row);
        EngineFactors engine = compiled().factors().engine(FuelKind.DIESEL, "C", 2008);
        Factor nox = engine.perKm().factor(Pollutant.NOX).orElseThrow();
        assertEquals(3.0, nox.value());
        assertEquals("Agency, table 1", nox.origin().citation());
        assertEquals("2024", nox.origin().date());
        assertEquals("US", nox.origin().region());
        assertEquals(new InputRef("EngineEmission", "diesel 2007 to 2009", "noxGPerKm"), nox.origin().input());
        assertTrue(engine.perIdleHour().factor(Pollutant.NOX).orElseThrow().placeholder());
        assertEquals(0.01, engine.perKm().factor(Pollutant.CH4).orElseThrow().value());
        assertEquals(factors.getEngineN2oGPerKm(), engine.perKm().factor(Pollutant.N2O).orElseThrow().value(), "as any engine");
        assertTrue(engine.perKm().factor(Pollutant.PM25).isEmpty() && engine.perKm().answersFor(Pollutant.PM25));
    }

    @Test
    void withoutRowsTheGridIsTheOneFigureOfTheStudy() {
        factors.setGridTrendPerYear(-0.1);
        assertEquals(0.34967 * 0.9, compiled().factors().grid().rates(1).factor(Pollutant.CO2E).orElseThrow().value(), 1e-12);
        assertTrue(compiled().factors().otherGrid().isEmpty());
    }

    @Test
    void theChosenRegionAndBasisCountAndTheOtherBasisStandsBeside() {
        study.getSettings().setBaseYear(2026);
        grid("South", org.amberyard.model.air.GridBasis.AVERAGE, 2025, 0.9);
        grid("North", org.amberyard.model.air.GridBasis.AVERAGE, 2030, 0.2);
        grid("North", org.amberyard.model.air.GridBasis.AVERAGE, 2026, 0.4);
        grid("North", org.amberyard.model.air.GridBasis.MARGINAL, 2026, 0.6);
        factors.setGridRegion("North");
        assertEquals(0.3, compiled().factors().grid().rates(2).factor(Pollutant.CO2E).orElseThrow().value(), 1e-12);
        assertEquals(GridBasis.MARGINAL, compiled().factors().otherGrid().orElseThrow().basis());
        factors.setGridBasis(org.amberyard.model.air.GridBasis.MARGINAL);
        assertEquals(0.6, compiled().factors().grid().rates(0).factor(Pollutant.CO2E).orElseThrow().value(), 1e-12);
        assertEquals(GridBasis.AVERAGE, compiled().factors().otherGrid().orElseThrow().basis());
        factors.setGridRegion(null);
        factors.setGridBasis(org.amberyard.model.air.GridBasis.AVERAGE);
        assertEquals("South", compiled().factors().grid().region(), "the first");
    }

    @Test
    void fuelsBringSulphurAndUpstream() {
        FuelEmission row = AirFactory.eINSTANCE.createFuelEmission();
        row.setSo2GPerL(0.025);
        row.setUpstreamCo2eKgPerL(0.6);
        factors.getFuelEmissions().add(row);
        AirInput air = compiled();
        assertEquals(0.025, air.factors().fuels().get(FuelKind.DIESEL).burnt().factor(Pollutant.SO2).orElseThrow().value());
        assertEquals(0.025, air.factors().heaterPerL().factor(Pollutant.SO2).orElseThrow().value(), "a heater burns diesel");
        assertEquals(0.6, air.factors().fuels().get(FuelKind.DIESEL).upstream().factor(Pollutant.CO2E).orElseThrow().value());
        assertTrue(air.factors().fuels().get(FuelKind.GASOLINE).burnt().factor(Pollutant.SO2).isEmpty());
    }

    @Test
    void setsOfWarmingPotentials() {
        Map<WarmingSet, WarmingPotentials> sets = Map.of(WarmingSet.AR4, WarmingPotentials.AR4, WarmingSet.AR5,
                WarmingPotentials.AR5, WarmingSet.AR6, WarmingPotentials.AR6, WarmingSet.OWN, WarmingPotentials.own(82.5, 273));
        factors.setGwpCh4(82.5);
        factors.setGwpN2o(273);
        sets.forEach((set, expected) -> {
            factors.setWarmingSet(set);
            assertEquals(expected, compiled().factors().warming());
        });
    }

    @Test
    void socialCostsKeepGasYearAndRate() {
        SocialCost row = AirFactory.eINSTANCE.createSocialCost();
        row.setGas(Gas.N2O);
        row.setYear(2030);
        row.setRate(0.015);
        row.setCostPerT(100_000);
        factors.getSocialCosts().add(row);
        factors.setSocialCostRate(0.015);
        factors.setSocialCostPriceFactor(1.2);
        assertEquals(120_000, compiled().social().perTonne(Pollutant.N2O, 2035).orElseThrow(), 1e-9);
    }

    @Test
    void theChassisStandsInForAnEngineWithoutAModelYear() {
        Bus bus = FleetFactory.eINSTANCE.createBus();
        bus.setName("7");
        bus.setType(VehiclesFactory.eINSTANCE.createCombustionType());
        bus.setModelYear(2012);
        bus.setEngineModelYear(2011);
        study.getBuses().add(bus);
        assertEquals(2011, compiled().engineModelYears().get("7"));
        bus.setEngineModelYear(0);
        assertEquals(2012, compiled().engineModelYears().get("7"));
    }
}
