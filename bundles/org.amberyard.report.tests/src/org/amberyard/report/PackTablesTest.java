package org.amberyard.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.amberyard.core.plan.FleetEvent;
import org.amberyard.core.plan.RotationPreview;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.testsupport.SampleDistrict;
import org.amberyard.testsupport.SamplePacks;
import org.junit.jupiter.api.Test;

/** Packs that lose an eighth each year under a warranty of six years; their figures by hand. */
class PackTablesTest {
    private final StudyResult result = SampleDistrict.evaluated(SamplePacks.wearing(SampleDistrict.small()));

    private ResultTable table(StudyResult of, String name) {
        return ResultTables.of(of, UnitSystem.METRIC).stream().filter(t -> t.name().equals(name)).findFirst().orElseThrow();
    }

    @Test
    void everyEndOfAPackHasItsCauseAndItsBill() {
        ResultTable packs = table(result, "pack_history");
        List<FleetEvent> ends = result.plans().get(1).fleet().events().stream()
                .filter(e -> e instanceof FleetEvent.PackReplaced || e instanceof FleetEvent.RetiredForPack).toList();
        assertFalse(ends.isEmpty());
        assertEquals(ends.size(), packs.rows().size());
        FleetEvent first = ends.get(0);
        double nominalKwh = result.input().types().get(first.vehicle().type()).electric().orElseThrow().battery().nominalKwh();
        double price = nominalKwh * 160 * Math.pow(0.97, first.year() + 1);
        assertEquals(List.of("Electric in stages", 2026 + first.year(), "B0" + (first.place() + 1), first.vehicle().unit(),
                "end-of-life capacity reached", "new pack", 3.0), packs.rows().get(0).subList(0, 7));
        assertEquals(first.vehicle().odometerKm(), packs.cell(0, "distance"), "the first pack has gone as far as the bus");
        assertEquals(100 * 0.625, (Double) packs.cell(0, "health"), 1e-9);
        assertEquals(100_000.0, packs.cell(0, "cycle_limit"));
        assertTrue((Double) packs.cell(0, "full_cycles") > 100);
        assertEquals(price, (Double) packs.cell(0, "price"), 1e-6);
        assertEquals(0.5 * price, (Double) packs.cell(0, "maker_pays"), 1e-6);
        assertEquals(2000, (Double) packs.cell(0, "labour"), 1e-9);
        double resale = 0.5 * 20 * nominalKwh * 0.625 * Math.pow(0.97, first.year() + 1);
        assertEquals(resale, (Double) packs.cell(0, "resale"), 1e-6);
        assertEquals(0.5 * price + 2000 - resale, (Double) packs.cell(0, "paid"), 1e-6);
        assertNull(packs.cell(0, "kept_per_year"));
        assertNull(packs.cell(0, "next_per_year"));
    }

    @Test
    void swapsTellBothBusesAndTheirLives() {
        StudyResult large = SampleDistrict.evaluated(SampleDistrict.large());
        ResultTable swaps = table(large, "rotation");
        int row = 0;
        for (int plan = 0; plan < large.plans().size(); plan++) {
            for (RotationPreview swap : RotationPreview.of(large, plan)) {
                String first = large.input().buses().get(swap.first().place()).name();
                assertEquals(List.of(large.plans().get(plan).name(), 2026 + swap.year(), first, first.replace('B', 'R')),
                        swaps.rows().get(row).subList(0, 4));
                assertEquals(swap.second().ownYears(), swaps.cell(row, "other_life_left"));
                double before = Math.min((Double) swaps.cell(row, "life_left"), (Double) swaps.cell(row, "other_life_left"));
                double after = Math.min((Double) swaps.cell(row, "life_left_swapped"),
                        (Double) swaps.cell(row, "other_life_left_swapped"));
                assertEquals(after - before, (Double) swaps.cell(row, "gain"), 1e-9);
                assertTrue(after > before);
                row++;
            }
        }
        assertTrue(row > 0);
        assertEquals(row, swaps.rows().size());
    }
}
