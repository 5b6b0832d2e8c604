package org.amberyard.core.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.amberyard.core.money.CostEffectiveness;
import org.junit.jupiter.api.Test;

class GrantTermsTest {
    private final GrantTerms terms = new GrantTerms(0.01, 10, 1, 1, 20);
    private final Masses reduced = SampleAir.rates(EmissionCause.DISTANCE, FactorUnit.G_PER_KM,
            Map.of(Pollutant.NOX, 450.0, Pollutant.HC, 20.0, Pollutant.PM25, 15.0)).of(1000);

    @Test
    void aShortTonIsTwoThousandPounds() {
        assertEquals(907.18474, GrantTerms.KG_PER_SHORT_TON, 1e-9);
        assertEquals(500, GrantTerms.perShortTon(1000, 2 * 907.18474), 1e-9);
        assertEquals(Double.NaN, GrantTerms.perShortTon(1000, 0));
        assertEquals(Double.NaN, GrantTerms.perShortTon(1000, -5), "what rises has no cost per reduction");
    }

    @Test
    void weightsMultiplyWhatIsReduced() {
        assertEquals(450 + 20 + 20 * 15, terms.weightedKg(reduced), 1e-9);
        CostEffectiveness recovered = terms.recovered(1000, reduced).orElseThrow();
        assertEquals(770 / 907.18474, recovered.reducedPerYear(), 1e-12);
        assertEquals(0.105582 * 1000 / (770 / 907.18474), recovered.costPerUnit(), 1e-3);
    }

    @Test
    void whereNothingIsReducedThereIsNoCostPerTon() {
        assertTrue(terms.recovered(1000, Masses.NONE).isEmpty());
        assertTrue(terms.recovered(1000, SampleAir.rates(EmissionCause.DISTANCE, FactorUnit.G_PER_KM, Map.of()).of(1)).isEmpty(),
                "not known");
        assertThrows(IllegalArgumentException.class, () -> new GrantTerms(0.01, 0, 1, 1, 20));
    }
}
