package org.amberyard.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.amberyard.core.air.EmissionCause;
import org.amberyard.core.air.EmissionRates;
import org.amberyard.core.air.FactorOrigin;
import org.amberyard.core.air.FactorQuality;
import org.amberyard.core.air.FactorUnit;
import org.amberyard.core.air.GrantTerms;
import org.amberyard.core.air.Masses;
import org.amberyard.core.air.Pollutant;
import org.amberyard.core.air.SocialCosts;
import org.amberyard.core.air.WearFactors;
import org.amberyard.core.upkeep.WearYear;
import org.amberyard.core.why.InputRef;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Idling, dust, social cost and cost-effectiveness against published figures. */
class AirQualityReferenceTest {
    private static final FactorOrigin EPA_2023 = new FactorOrigin(new InputRef("SocialCost", "", "costPerT"), "",
            FactorQuality.PUBLISHED, "US EPA, Report on the Social Cost of Greenhouse Gases, 2023", "2023-12");

    /**
     * McCormick, Graboski, Alleman, Yanowitz: Idle emissions from heavy-duty diesel and natural gas vehicles at high altitude,
     * Journal of the Air and Waste Management Association 50 (2000) 1992-1998, abstract (read): twelve diesel buses averaged
     * 0.137 g/min THC, 1.326 CO, 2.015 NOx and 0.048 PM. An hour, computed.
     */
    @Test
    void anHourOfIdlingOfOldDieselBuses() {
        EmissionRates idle = PublishedRates.of(EmissionCause.IDLE_TIME, FactorUnit.G_PER_H, Map.of(Pollutant.HC, 60 * 0.137,
                Pollutant.CO, 60 * 1.326, Pollutant.NOX, 60 * 2.015, Pollutant.PM25, 60 * 0.048));
        Masses hour = idle.of(1);
        assertEquals(120.9e-3, hour.kg(Pollutant.NOX), 1e-9);
        assertEquals(2.88e-3, hour.kg(Pollutant.PM25), 1e-9);
        assertEquals(79.56e-3, hour.kg(Pollutant.CO), 1e-9);
        assertEquals(8.22e-3, hour.kg(Pollutant.HC), 1e-9);
    }

    /**
     * EMEP/EEA air pollutant emission inventory guidebook 2019, chapter 1.A.3.b.vi-vii, tier 2 (read in a transcription): brakes
     * of heavy vehicles 1.956 × (1 + 0.79 load) × 0.0075 g/km TSP, 39 % of it PM2.5, × 1.67 below 40 km/h; tyres of two axles
     * (1.41 + 1.38 load) × 0.0107, 42 %, × 1.39. At half load 0.01333 and 0.01312 g/km (computed).
     */
    @Test
    void dustOfBrakesAndTyres() {
        double brakes = 1.956 * (1 + 0.79 * 0.5) * 0.0075 * 0.39 * 1.67;
        double tyres = (1.41 + 1.38 * 0.5) * 0.0107 * 0.42 * 1.39;
        WearFactors dust = new WearFactors("EMEP/EEA", "", wear(brakes), 0.33, wear(tyres), Optional.empty());
        WearYear year = new WearYear(19_312, 700, 0, 0, 11_000, Collections.nCopies(12, 1 / 12.0));
        assertEquals(0.01333 * 19.312, dust.brakes().of(dust.brakeKm(year)).kg(Pollutant.PM25), 1e-4);
        assertEquals(0.01312 * 19.312, dust.tyres().of(dust.tyreKm(year)).kg(Pollutant.PM25), 1e-4);
    }

    private static EmissionRates wear(double gPerKm) {
        return PublishedRates.of(EmissionCause.WEAR, FactorUnit.G_PER_KM, Map.of(Pollutant.PM25, gPerKm));
    }

    /**
     * US EPA, Report on the Social Cost of Greenhouse Gases: Estimates Incorporating Recent Scientific Advances, 2023, yearly
     * table as published with its computations (scghg_annual.csv, read), 2020 dollars, 2 % near-term rate. Ten-year points alone
     * give the years between within a rounding.
     */
    @ParameterizedTest
    @CsvSource({"CO2,2020,193", "CO2,2025,212", "CO2,2027,219", "CO2,2030,230", "CO2,2036,252", "CO2,2040,267", "CO2,2050,308",
        "CH4,2025,2025", "CH4,2027,2176", "CH4,2033,2666", "N2O,2025,60267", "N2O,2034,71394", "N2O,2045,85945"})
    void socialCostByYear(Pollutant gas, int year, double published) {
        SocialCosts costs = new SocialCosts(List.of(point(Pollutant.CO2, 2020, 193), point(Pollutant.CO2, 2030, 230),
                point(Pollutant.CO2, 2040, 267), point(Pollutant.CO2, 2050, 308), point(Pollutant.CH4, 2020, 1648),
                point(Pollutant.CH4, 2030, 2403), point(Pollutant.CH4, 2040, 3280), point(Pollutant.N2O, 2020, 54_139),
                point(Pollutant.N2O, 2030, 66_395), point(Pollutant.N2O, 2040, 78_894), point(Pollutant.N2O, 2050, 92_996)),
                0.02, 1);
        assertEquals(published, costs.perTonne(gas, year).orElseThrow(), 1);
    }

    private static SocialCosts.Point point(Pollutant gas, int year, double perTonne) {
        return new SocialCosts.Point(gas, year, 0.02, perTonne, EPA_2023);
    }

    /** 18.849 t of a diesel bus in 2027 at the rounded 210 and 230 of 2025 and 2030: 218 and 4,109.08 of 2020 dollars (computed). */
    @Test
    void socialCostOfABusYear() {
        SocialCosts rounded = new SocialCosts(List.of(point(Pollutant.CO2, 2025, 210), point(Pollutant.CO2, 2030, 230)), 0.02, 1);
        Masses year = PublishedRates.of(EmissionCause.GENERATION, FactorUnit.KG_PER_KWH, Map.of(Pollutant.CO2E, 18_849.0)).of(1);
        assertEquals(4109.08, rounded.of(year, 2027), 0.01);
    }

    /**
     * The formula of the Carl Moyer Program Guidelines (California Air Resources Board; formula from memory; its published limit
     * of 2014 at 1 % was 17,720 dollars a ton, read) on an invented project, as no published example could be read: 250,000 over
     * 10 years for 0.45 t NOx, 0.02 t ROG and 0.015 t PM a year gives 34,279.89, and 129,230.27 would just meet the limit.
     */
    @Test
    void costPerWeightedTon() {
        GrantTerms terms = new GrantTerms(0.01, 10, 1, 1, 20);
        double ton = GrantTerms.KG_PER_SHORT_TON;
        Masses reduced = PublishedRates.of(EmissionCause.DISTANCE, FactorUnit.KG_PER_L, Map.of(Pollutant.NOX, 0.45 * ton,
                Pollutant.HC, 0.02 * ton, Pollutant.PM25, 0.015 * ton)).of(1);
        assertEquals(34_279.89, terms.recovered(250_000, reduced).orElseThrow().costPerUnit(), 0.01);
        assertEquals(129_230.27, terms.recovered(250_000, reduced).orElseThrow().largestCost(17_720), 0.01);
    }
}
