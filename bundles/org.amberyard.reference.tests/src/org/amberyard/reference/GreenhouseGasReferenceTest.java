package org.amberyard.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import org.amberyard.core.air.GreenhouseGas;
import org.amberyard.core.duty.FuelKind;
import org.amberyard.core.units.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * US EPA, Emission Factors for Greenhouse Gas Inventories, 15 January 2025, tables 2 and 4 (read in a transcription):
 * diesel 10.21 kg CO2/gal; diesel medium and heavy 2007-2022 0.0095 g CH4 and 0.0431 g N2O per mile. Warming potentials of
 * IPCC AR5, 28 and 265, from memory.
 */
class GreenhouseGasReferenceTest {
    private static final double KG_PER_LB = 0.45359237;

    private static GreenhouseGas factors(double gridKgPerKwh, double loss) {
        return new GreenhouseGas(Map.of(FuelKind.DIESEL, 10.21 / Unit.L_PER_GALLON), 0.0095 / Unit.KM_PER_MILE,
                0.0431 / Unit.KM_PER_MILE, 28, 265, gridKgPerKwh, 0, loss);
    }

    /** 12,000 miles at 6.5 mpg: 1,570.77 g CO2 and 1,582.46 g CO2e per mile (computed). */
    @Test
    void dieselBusYear() {
        double fuelL = 12_000 / 6.5 * Unit.L_PER_GALLON;
        double kg = factors(0, 0).tailpipeKg(FuelKind.DIESEL, fuelL, 12_000 * Unit.KM_PER_MILE);
        assertEquals(1582.46, kg * 1000 / 12_000, 0.01);
        assertEquals(18.849, factors(0, 0).heaterKg(fuelL) / 1000, 5e-4);
    }

    /**
     * US EPA eGRID2023 revision 2, CO2e total output rates (read in a transcription): US 770.884, NYUP 242.776, MROE
     * 1404.963, CAMX 429.983 lb/MWh. At 1.5 kWh per mile with 4.5 % line loss (computed).
     */
    @ParameterizedTest
    @CsvSource({"770.884,549.22", "242.776,172.97", "1404.963,1000.96", "429.983,306.34"})
    void gridPerMile(double lbPerMwh, double gramPerMile) {
        double kgPerKwh = lbPerMwh * KG_PER_LB / 1000;
        assertEquals(gramPerMile, factors(kgPerKwh, 0.045).gridKg(1.5, 0) * 1000, 0.01);
    }

    /** Lower heating value of diesel, 128,488 Btu/gal = 37.6561 kWh/gal: US alternative fuels data center, from memory. */
    @Test
    void dieselHeatingValue() {
        assertEquals(37.6561, FuelKind.DIESEL.kwhPerL() * Unit.L_PER_GALLON, 1e-3);
    }
}
