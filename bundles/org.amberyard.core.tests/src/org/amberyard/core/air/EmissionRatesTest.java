package org.amberyard.core.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class EmissionRatesTest {
    private final EmissionRates byDistance = SampleAir.rates(EmissionCause.DISTANCE, FactorUnit.G_PER_KM,
            Map.of(Pollutant.NOX, 2.0, Pollutant.CH4, 0.01, Pollutant.N2O, 0.02));

    @Test
    void massIsActivityByFactor() {
        assertEquals(2.0, byDistance.of(1000).kg(Pollutant.NOX), 1e-12);
        EmissionRates byFuel = SampleAir.rates(EmissionCause.FUEL_BURNT, FactorUnit.KG_PER_L, Map.of(Pollutant.CO2, 2.7));
        assertEquals(270, byFuel.of(100).kg(Pollutant.CO2), 1e-12);
    }

    @Test
    void whatIsNotKnownIsNotZero() {
        Masses masses = byDistance.of(1000);
        assertFalse(masses.known(Pollutant.PM25));
        assertFalse(masses.plus(Masses.NONE).known(Pollutant.PM25));
        assertEquals(0, masses.kg(Pollutant.CO2), "the distance does not answer for carbon dioxide");
        assertEquals(Masses.NONE, byDistance.of(0), "a bus that stands still emits nothing, known or not");
    }

    @Test
    void massesRememberWhatOnlyStandsIn() {
        EmissionRates rates = new EmissionRates(Map.of(
                Pollutant.NOX, Optional.of(SampleAir.factor(2, FactorUnit.G_PER_KM, FactorQuality.PLACEHOLDER)),
                Pollutant.HC, Optional.of(SampleAir.factor(1, FactorUnit.G_PER_KM, FactorQuality.UNKNOWN)),
                Pollutant.CO, Optional.of(SampleAir.factor(1, FactorUnit.G_PER_KM, FactorQuality.MEASURED))));
        Masses sum = rates.of(10).plus(byDistance.of(10));
        assertTrue(sum.placeholder(Pollutant.NOX) && sum.placeholder(Pollutant.HC) && sum.anyPlaceholder());
        assertFalse(sum.placeholder(Pollutant.CO));
        assertFalse(rates.of(0).anyPlaceholder(), "nothing emitted, nothing stands in");
        assertFalse(sum.times(0).anyPlaceholder());
    }

    @Test
    void co2eIsTheGasesByTheirWarming() {
        Masses masses = byDistance.of(1e6).withCo2e(WarmingPotentials.AR6);
        assertEquals(10 * 27.9 + 20 * 273, masses.kg(Pollutant.CO2E), 1e-9);
        Masses unknown = SampleAir.rates(EmissionCause.DISTANCE, FactorUnit.G_PER_KM, Map.of(Pollutant.CH4, 0.01)).of(10)
                .withCo2e(WarmingPotentials.AR5);
        assertFalse(unknown.known(Pollutant.CO2E));
    }

    @Test
    void co2eStandsInWhenAGasDoes() {
        EmissionRates rates = new EmissionRates(Map.of(Pollutant.CH4,
                Optional.of(SampleAir.factor(1, FactorUnit.G_PER_KM, FactorQuality.PLACEHOLDER))));
        assertTrue(rates.of(1).withCo2e(WarmingPotentials.AR5).placeholder(Pollutant.CO2E));
    }

    @Test
    void differencesAndMultiplesFollow() {
        Masses masses = byDistance.of(10).minus(byDistance.of(4));
        assertEquals(byDistance.of(6).kg(Pollutant.NOX), masses.kg(Pollutant.NOX), 1e-15);
        assertEquals(byDistance.of(30).kg(Pollutant.NOX), byDistance.of(10).times(3).kg(Pollutant.NOX), 1e-15);
    }

    @Test
    void aFactorBelowZeroIsRefused() {
        String message = assertThrows(IllegalArgumentException.class,
                () -> SampleAir.factor(-1, FactorUnit.G_PER_H, FactorQuality.ASSUMED)).getMessage();
        assertEquals("Emission factor g/h is -1.0 but must be 0 or more", message);
    }
}
