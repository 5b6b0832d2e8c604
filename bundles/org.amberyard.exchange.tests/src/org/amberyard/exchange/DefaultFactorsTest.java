package org.amberyard.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.amberyard.model.air.EngineEmission;
import org.amberyard.model.air.GridEmission;
import org.amberyard.model.common.Quality;
import org.amberyard.model.common.SourceNote;
import org.amberyard.model.common.Sourced;
import org.amberyard.model.study.EmissionFactors;
import org.eclipse.emf.ecore.EObject;
import org.junit.jupiter.api.Test;

class DefaultFactorsTest {
    private final EmissionFactors factors = DefaultFactors.all();

    private static Quality quality(Sourced row, String field) {
        return row.getSources().stream().filter(n -> n.getField().equals(field))
                .findFirst().or(() -> row.getSources().stream().filter(n -> "*".equals(n.getField())).findFirst())
                .map(SourceNote::getQuality).orElseThrow();
    }

    @Test
    void everyRowSaysWhereItIsFrom() {
        List<EObject> rows = factors.eContents();
        assertTrue(rows.size() > 80);
        for (EObject row : rows) {
            Sourced sourced = (Sourced) row;
            assertTrue(sourced.getSources().stream().anyMatch(n -> "*".equals(n.getField())), row.toString());
            sourced.getSources().forEach(n -> assertFalse(n.getCitation().isBlank()));
            sourced.getSources().stream().filter(n -> n.getQuality() == Quality.PUBLISHED)
                    .forEach(n -> assertFalse(n.getDate().isBlank(), n.getCitation()));
        }
    }

    /** US EPA, Emission Factors Hub, 15 January 2025, table 4: 0.0095 g CH4 and 0.0431 g N2O per mile, diesel 2007 to 2022. */
    @Test
    void publishedFactorsKeepTheirValuesAndPlaceholdersAreMarked() {
        EngineEmission recent = factors.getEngineEmissions().stream().filter(e -> e.getFirstModelYear() == 2007).findFirst()
                .orElseThrow();
        assertEquals(0.0095, recent.getCh4GPerKm() * 1.609344, 1e-12);
        assertEquals(0.0431, recent.getN2oGPerKm() * 1.609344, 1e-12);
        assertEquals(Quality.PUBLISHED, quality(recent, "ch4GPerKm"));
        assertEquals(Quality.PLACEHOLDER, quality(recent, "noxGPerKm"));
    }

    /** US EPA eGRID2023 revision 2: 27 subregions and the US mean; MROE 1404.963 lb/MWh. */
    @Test
    void theGridHasItsSubregions() {
        assertEquals(28, factors.getGridEmissions().size());
        GridEmission mroe = factors.getGridEmissions().stream().filter(g -> g.getRegion().startsWith("MROE")).findFirst()
                .orElseThrow();
        assertEquals(1404.963 * 0.45359237 / 1000, mroe.getCo2eKgPerKwh(), 1e-5);
        assertEquals(Quality.PUBLISHED, quality(mroe, "co2eKgPerKwh"));
    }

    @Test
    void eachCallGivesCopies() {
        assertFalse(DefaultFactors.all().getEngineEmissions().get(0) == DefaultFactors.all().getEngineEmissions().get(0));
    }
}
