package org.amberyard.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import org.amberyard.core.air.EmissionCause;
import org.amberyard.core.air.EmissionRates;
import org.amberyard.core.air.FactorUnit;
import org.amberyard.core.air.GridBasis;
import org.amberyard.core.air.GridPath;
import org.amberyard.core.air.Masses;
import org.amberyard.core.air.Pollutant;
import org.amberyard.core.air.WarmingPotentials;
import org.amberyard.core.duty.FuelKind;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * US EPA, Emission Factors for Greenhouse Gas Inventories, 15 January 2025, tables 2 to 4 (read in two transcriptions): diesel
 * 10.21 and gasoline 8.78 kg CO2/gal; medium and heavy diesel 2007-2022 0.0095 g CH4 and 0.0431 g N2O per mile, to 2006 0.0051
 * and 0.0048; heavy gasoline 2022 0.0332 and 0.0100.
 */
class GreenhouseGasReferenceTest {
    private static final double KG_PER_LB = 0.45359237;
    private static final double BUS_MILES = 12_000;
    private static final double BUS_GALLONS = BUS_MILES / 6.5;

    private static Masses year(double co2KgPerGal, double ch4GPerMile, double n2oGPerMile, WarmingPotentials warming) {
        EmissionRates fuel = PublishedRates.of(EmissionCause.FUEL_BURNT, FactorUnit.KG_PER_L,
                Map.of(Pollutant.CO2, Unit.KG_PER_LITRE.store(co2KgPerGal, UnitSystem.US)));
        EmissionRates road = PublishedRates.of(EmissionCause.DISTANCE, FactorUnit.G_PER_KM,
                Map.of(Pollutant.CH4, ch4GPerMile / Unit.KM_PER_MILE, Pollutant.N2O, n2oGPerMile / Unit.KM_PER_MILE));
        return fuel.of(BUS_GALLONS * Unit.L_PER_GALLON).plus(road.of(BUS_MILES * Unit.KM_PER_MILE)).withCo2e(warming);
    }

    /** 12,000 miles at 6.5 mpg: 18.849 t CO2, 1,570.77 g CO2 and at AR5 1,582.46 g CO2e per mile; AR6 adds 12.031 (computed). */
    @Test
    void dieselBusYear() {
        Masses ar5 = year(10.21, 0.0095, 0.0431, WarmingPotentials.AR5);
        assertEquals(18.849, ar5.kg(Pollutant.CO2) / 1000, 5e-4);
        assertEquals(1570.77, ar5.kg(Pollutant.CO2) * 1000 / BUS_MILES, 0.01);
        assertEquals(1582.46, ar5.kg(Pollutant.CO2E) * 1000 / BUS_MILES, 0.01);
        Masses ar6 = year(10.21, 0.0095, 0.0431, WarmingPotentials.AR6);
        assertEquals(1570.77 + 12.031, ar6.kg(Pollutant.CO2E) * 1000 / BUS_MILES, 0.01);
    }

    /** Older engines and gasoline, by hand: 10.21/6.5 × 1,000 + 0.0051 × 25 + 0.0048 × 298, and 8.78/6.5 × 1,000 + … at AR4. */
    @ParameterizedTest
    @CsvSource({"10.21,0.0051,0.0048,1572.327", "8.78,0.0332,0.0100,1354.579"})
    void otherEngines(double co2KgPerGal, double ch4, double n2o, double gramPerMile) {
        assertEquals(gramPerMile, year(co2KgPerGal, ch4, n2o, WarmingPotentials.AR4).kg(Pollutant.CO2E) * 1000 / BUS_MILES, 1e-3);
    }

    /**
     * Warming over 100 years, IPCC Working Group I: AR4 (2007) 25 and 298; AR5 (2013) table 8.A.1 28 and 265; AR6 (2021) table
     * 7.SM.7 27.9 and 273 (read in transcriptions).
     */
    @Test
    void warmingPotentials() {
        assertEquals(List.of(25.0, 298.0), values(WarmingPotentials.AR4));
        assertEquals(List.of(28.0, 265.0), values(WarmingPotentials.AR5));
        assertEquals(List.of(27.9, 273.0), values(WarmingPotentials.AR6));
    }

    private static List<Double> values(WarmingPotentials set) {
        return List.of(set.ch4(), set.n2o());
    }

    /**
     * US EPA eGRID2023 revision 2, CO2e total output rates (read in a transcription): US 770.884, NYUP 242.776, MROE
     * 1404.963, CAMX 429.983 lb/MWh. At 1.5 kWh per mile with 4.5 % line loss (computed).
     */
    @ParameterizedTest
    @CsvSource({"770.884,549.22", "242.776,172.97", "1404.963,1000.96", "429.983,306.34"})
    void gridPerMile(double lbPerMwh, double gramPerMile) {
        EmissionRates rates = PublishedRates.of(EmissionCause.GENERATION, FactorUnit.KG_PER_KWH,
                Map.of(Pollutant.CO2E, lbPerMwh * KG_PER_LB / 1000));
        GridPath grid = new GridPath("", GridBasis.AVERAGE, List.of(new GridPath.Point(0, rates)), 0, 0.045);
        assertEquals(gramPerMile, grid.of(1.5, 0, WarmingPotentials.AR5).kg(Pollutant.CO2E) * 1000, 0.01);
    }

    /** US EPA eGRID2022 and eGRID2023, US mean, 823.1 lb/MWh CO2 and 770.884 CO2e (read), fall by 6 % in a year; so goes the trend. */
    @Test
    void vintagesOfTheGridOnALine() {
        GridPath grid = new GridPath("", GridBasis.AVERAGE, List.of(point(-4, 823.1), point(-3, 770.884)), -0.06, 0);
        double lbPerMwh = grid.rates(-2).factor(Pollutant.CO2E).orElseThrow().value() * 1000 / KG_PER_LB;
        assertEquals(770.884 * 0.94, lbPerMwh, 1e-9);
    }

    private static GridPath.Point point(int year, double lbPerMwh) {
        return new GridPath.Point(year, PublishedRates.of(EmissionCause.GENERATION, FactorUnit.KG_PER_KWH,
                Map.of(Pollutant.CO2E, lbPerMwh * KG_PER_LB / 1000)));
    }

    /** Lower heating value of diesel, 128,488 Btu/gal = 37.6561 kWh/gal: US alternative fuels data center, from memory. */
    @Test
    void dieselHeatingValue() {
        assertEquals(37.6561, FuelKind.DIESEL.kwhPerL() * Unit.L_PER_GALLON, 1e-3);
    }
}
