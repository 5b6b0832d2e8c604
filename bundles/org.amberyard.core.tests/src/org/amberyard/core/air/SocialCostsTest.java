package org.amberyard.core.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.amberyard.core.why.InputRef;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SocialCostsTest {
    private static final FactorOrigin INVENTED = new FactorOrigin(new InputRef("SocialCost", "", "costPerT"), "",
            FactorQuality.ASSUMED, "invented", "");

    private static SocialCosts.Point point(Pollutant gas, int year, double rate, double perTonne) {
        return new SocialCosts.Point(gas, year, rate, perTonne, INVENTED);
    }

    private static SocialCosts table(double rate, double priceFactor) {
        return new SocialCosts(List.of(point(Pollutant.CO2, 2030, 0.02, 230), point(Pollutant.CO2, 2020, 0.02, 190),
                point(Pollutant.CO2, 2020, 0.025, 120), point(Pollutant.CH4, 2020, 0.02, 1600),
                point(Pollutant.N2O, 2020, 0.02, 54_000)), rate, priceFactor);
    }

    @ParameterizedTest
    @CsvSource({"2010,190", "2020,190", "2027,218", "2030,230", "2050,230"})
    void onTheLineBetweenYearsAndLevelBeyondThem(int year, double expected) {
        assertEquals(expected, table(0.02, 1).perTonne(Pollutant.CO2, year).orElseThrow(), 1e-9);
    }

    @Test
    void eachRateHasItsColumn() {
        assertEquals(120, table(0.025, 1).perTonne(Pollutant.CO2, 2025).orElseThrow(), 1e-9);
        assertTrue(table(0.05, 1).perTonne(Pollutant.CO2, 2025).isEmpty());
        assertEquals(1.2 * 190, table(0.02, 1.2).perTonne(Pollutant.CO2, 2020).orElseThrow(), 1e-9);
    }

    @Test
    void gasesCountOneByOneOrAsCarbonDioxide() {
        Masses gases = SampleAir.rates(EmissionCause.HEATER_FUEL, FactorUnit.KG_PER_L,
                Map.of(Pollutant.CO2, 1000.0, Pollutant.CH4, 2.0, Pollutant.N2O, 0.5)).of(1);
        assertEquals(190 + 2e-3 * 1600 + 0.5e-3 * 54_000, table(0.02, 1).of(gases, 2020), 1e-9);
        Masses sum = SampleAir.rates(EmissionCause.GENERATION, FactorUnit.KG_PER_KWH, Map.of(Pollutant.CO2E, 1000.0)).of(1);
        assertEquals(190, table(0.02, 1).of(sum, 2020), 1e-9);
        assertEquals(Double.NaN, SocialCosts.NONE.of(gases, 2020));
        assertEquals(0, SocialCosts.NONE.of(Masses.NONE, 2020));
    }

    @Test
    void healthIsARangeBySource() {
        HealthCosts costs = new HealthCosts(List.of(new HealthCosts.Cost(Pollutant.NOX, false, 5_000, 20_000, INVENTED),
                new HealthCosts.Cost(Pollutant.NOX, true, 1_000, 2_000, INVENTED)));
        Masses nox = new EmissionRates(Map.of(Pollutant.NOX,
                Optional.of(SampleAir.factor(1000, FactorUnit.KG_PER_L, FactorQuality.MEASURED)))).of(1);
        Emissions emissions = new Emissions(Map.of(EmissionSource.DRIVING, nox, EmissionSource.GRID, nox.times(2),
                EmissionSource.UPSTREAM, nox));
        assertEquals(5_000 + 2 * 1_000, costs.low(emissions), 1e-9);
        assertEquals(20_000 + 2 * 2_000, costs.high(emissions), 1e-9);
        assertEquals(0, HealthCosts.NONE.high(emissions));
    }

    @Test
    void totalsLeaveOutWhatIsUpstream() {
        Masses one = SampleAir.rates(EmissionCause.WEAR, FactorUnit.KG_PER_L, Map.of(Pollutant.PM25, 1.0)).of(1);
        Emissions emissions = new Emissions(Map.of(EmissionSource.IDLING, one, EmissionSource.BRAKES, one, EmissionSource.GRID, one,
                EmissionSource.UPSTREAM, one));
        assertEquals(3, emissions.total().kg(Pollutant.PM25), 1e-12);
        assertEquals(1, emissions.exhaust().kg(Pollutant.PM25), 1e-12);
        assertEquals(1, emissions.wear().kg(Pollutant.PM25), 1e-12);
    }
}
