package org.amberyard.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Exact conversion factors of NIST Handbook 44, appendix C (from memory; the definitions are exact). */
class UnitReferenceTest {

    @ParameterizedTest
    @CsvSource({"km,1.609344,1", "m,0.3048,1", "kg,0.45359237,1", "L,3.785411784,1", "degC,-40,-40", "degC,100,212",
        "km/h,88.51392,55", "money/km,1,1.609344", "money/L,1,3.785411784", "kWh/km,1,1.609344", "share,0.045,4.5", "share/K,0.009,0.5"})
    void storedAndShown(String token, double stored, double shown) {
        Unit unit = Unit.ofToken(token).orElseThrow();
        assertEquals(shown, unit.show(stored, UnitSystem.US), Math.abs(shown) * 1e-12);
        assertEquals(stored, unit.store(shown, UnitSystem.US), Math.abs(stored) * 1e-12);
    }
}
