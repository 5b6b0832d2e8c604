package org.amberyard.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.amberyard.core.duty.StandardAtmosphere;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * US Standard Atmosphere, 1976 (NOAA, NASA, USAF), by geopotential altitude: constants from memory, values computed from
 * them independently.
 */
class StandardAtmosphereReferenceTest {

    @ParameterizedTest
    @CsvSource({"0,101325.0,1.224999156", "500,95460.8,1.167268055", "1000,89874.6,1.111641812", "1500,84556.0,1.058066648",
        "2000,79495.2,1.006489561", "3000,70108.5,0.909121457"})
    void pressureAndDensity(double elevationM, double pressurePa, double densityKgPerM3) {
        double standardC = StandardAtmosphere.temperatureK(elevationM) - 273.15;
        assertEquals(pressurePa, StandardAtmosphere.pressurePa(elevationM), pressurePa * 1e-5);
        assertEquals(densityKgPerM3, StandardAtmosphere.densityKgPerM3(elevationM, standardC), densityKgPerM3 * 1e-5);
    }
}
