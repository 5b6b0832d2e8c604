package org.amberyard.core.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.amberyard.core.duty.FuelKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Factors and masses of invented figures; what rests on a factor that only stands in is marked. */
class FactorTest {
    private static final Factor SOUND = SampleAir.factor(2, FactorUnit.G_PER_KM, FactorQuality.PUBLISHED);
    private static final Factor STANDS_IN = SampleAir.factor(4, FactorUnit.G_PER_KM, FactorQuality.PLACEHOLDER);

    @Test
    void betweenTwoFactorsTheWorseOriginCounts() {
        assertEquals(2.5, SOUND.towards(STANDS_IN, 0.25).value(), 1e-12);
        assertTrue(SOUND.towards(STANDS_IN, 0.25).placeholder());
        assertTrue(STANDS_IN.towards(SOUND, 0.25).placeholder());
        assertFalse(SOUND.towards(SampleAir.factor(4, FactorUnit.G_PER_KM, FactorQuality.MEASURED), 0.25).placeholder());
        Factor other = SampleAir.factor(4, FactorUnit.G_PER_KM, FactorQuality.UNKNOWN);
        assertSame(STANDS_IN.origin(), STANDS_IN.towards(other, 0.5).origin());
    }

    @Test
    void massesAreInKilograms() {
        assertEquals(0.2, SOUND.kg(100), 1e-12);
        assertEquals(200, SampleAir.factor(2, FactorUnit.KG_PER_L, FactorQuality.PUBLISHED).kg(100), 1e-12);
        assertSame(FactorUnit.KG_PER_KWH, FactorUnit.of("kg/kWh"));
        assertEquals("kWh", FactorUnit.of("g/kWh").activity());
        assertThrows(IllegalArgumentException.class, () -> FactorUnit.of("lb/MWh"));
    }

    private static Masses gases(Map<Pollutant, FactorQuality> qualities) {
        Masses sum = Masses.NONE;
        for (Pollutant gas : List.of(Pollutant.CO2, Pollutant.CH4, Pollutant.N2O)) {
            Map<Pollutant, Optional<Factor>> one = Map.of(gas, Optional.of(SampleAir.factor(1, FactorUnit.KG_PER_L,
                    qualities.getOrDefault(gas, FactorQuality.MEASURED))));
            sum = sum.plus(new EmissionRates(one).of(1));
        }
        return sum;
    }

    /** A kilogram of each, by the warming of the fifth assessment report (IPCC 2013, from memory): 28 for methane, 265 for nitrous oxide. */
    @Test
    void co2eIsTheSumOfTheGasesByTheirWarming() {
        Masses all = gases(Map.of()).withCo2e(WarmingPotentials.AR5);
        assertEquals(1 + 28 + 265, all.kg(Pollutant.CO2E), 1e-9);
        assertFalse(all.placeholder(Pollutant.CO2E));
    }

    @ParameterizedTest
    @EnumSource(value = Pollutant.class, names = {"CO2", "CH4", "N2O"})
    void co2eRestsOnEachOfItsGases(Pollutant standsIn) {
        Masses all = gases(Map.of(standsIn, FactorQuality.PLACEHOLDER)).withCo2e(WarmingPotentials.AR5);
        assertTrue(all.placeholder(Pollutant.CO2E));
        assertTrue(all.minus(all).placeholder(standsIn), "also where nothing is left of it");
    }

    @Test
    void massesAreAlikeByFiguresAndMarks() {
        assertEquals(gases(Map.of()), gases(Map.of()));
        assertEquals(gases(Map.of()).hashCode(), gases(Map.of()).hashCode());
        assertNotEquals(gases(Map.of()), gases(Map.of(Pollutant.CO2, FactorQuality.PLACEHOLDER)));
        assertNotEquals(gases(Map.of()), gases(Map.of()).times(2));
    }

    @Test
    void emissionsAddUpSourceBySource() {
        Masses one = gases(Map.of());
        Emissions driving = new Emissions(Map.of(EmissionSource.DRIVING, one));
        Emissions both = driving.plus(new Emissions(Map.of(EmissionSource.DRIVING, one.times(2), EmissionSource.GRID, one)));
        assertEquals(3, both.of(EmissionSource.DRIVING).kg(Pollutant.CO2), 1e-12);
        assertEquals(1, both.of(EmissionSource.GRID).kg(Pollutant.CO2), 1e-12);
        Emissions changed = both.with(EmissionSource.GRID, one.times(5));
        assertEquals(5, changed.of(EmissionSource.GRID).kg(Pollutant.CO2), 1e-12);
        assertEquals(8, changed.total().kg(Pollutant.CO2), 1e-12);
    }

    @Test
    void aGroupOfEnginesEndsWithItsFirstAndLastModelYears() {
        EngineFactors group = SampleAir.group("group", "AB", 2007, 2009, Map.of());
        assertTrue(group.holdsFor(FuelKind.DIESEL, "A", 2007) && group.holdsFor(FuelKind.DIESEL, "B", 2009));
        assertFalse(group.holdsFor(FuelKind.DIESEL, "A", 2006) || group.holdsFor(FuelKind.DIESEL, "A", 2010));
        assertFalse(group.holdsFor(FuelKind.DIESEL, "C", 2008) || group.holdsFor(FuelKind.PROPANE, "A", 2008));
    }

    @Test
    void dustOfABodyTypeCountsBeforeThatForAll() {
        EmissionRates none = EmissionRates.of(EmissionCause.WEAR, Map.of());
        WearFactors all = new WearFactors("all", "", none, 0.3, none, Optional.empty());
        WearFactors small = new WearFactors("small", "AB", none, 0.3, none, Optional.empty());
        AirFactors whole = SampleAir.whole().factors();
        AirFactors factors = new AirFactors(whole.fuels(), List.of(), whole.otherEngines(), List.of(all, small), whole.heaterPerL(),
                whole.grid(), Optional.empty(), WarmingPotentials.AR5, false);
        assertSame(small, factors.wear("A"));
        assertSame(all, factors.wear("C"));
    }
}
