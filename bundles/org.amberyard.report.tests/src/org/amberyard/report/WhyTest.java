package org.amberyard.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.core.why.Derivation;
import org.amberyard.testsupport.SampleDistrict;
import org.junit.jupiter.api.Test;

/** Every cell of every table says how it comes about; cells of money down to their parts. */
class WhyTest {
    private static final StudyResult RESULT = SampleDistrict.evaluated(SampleDistrict.small());
    private static final List<String> TRACED = List.of("headline.present_cost", "cost_by_year.amount", "cost_by_bus.amount",
            "cash_by_year.capital", "cash_by_year.energy", "cash_by_year.upkeep");

    @Test
    void tracedCellsAreWhatTheirDerivationComesTo() {
        List<ResultTable> tables = ResultTables.of(RESULT, UnitSystem.METRIC);
        int checked = 0;
        for (int place = 0; place < tables.size(); place++) {
            ResultTable table = tables.get(place);
            for (int column = 0; column < table.columns().size(); column++) {
                if (TRACED.contains(table.name() + "." + table.columns().get(column).name())) {
                    checked += check(table, place, column);
                }
            }
        }
        assertTrue(checked > 300, checked + " cells");
    }

    private static int check(ResultTable table, int place, int column) {
        for (int row = 0; row < table.rows().size(); row++) {
            double cell = ((Number) table.rows().get(row).get(column)).doubleValue();
            Derivation why = ResultTables.why(place, RESULT, row, column);
            assertEquals(cell, why.value(), 1e-7 * Math.max(1, Math.abs(cell)), table.name() + " row " + row);
            assertTrue(cell == 0 || !why.parts().isEmpty(), why.name());
        }
        return table.rows().size();
    }

    @Test
    void otherCellsAreToldByTheirMeaning() {
        List<ResultTable> tables = ResultTables.of(RESULT, UnitSystem.METRIC);
        for (int place = 0; place < tables.size(); place++) {
            for (int column = 0; !tables.get(place).rows().isEmpty() && column < tables.get(place).columns().size(); column++) {
                Derivation why = ResultTables.why(place, RESULT, 0, column);
                assertFalse(why.name().isBlank());
                assertTrue(!why.rule().isBlank() || why.input().isPresent(), tables.get(place).name() + ": " + why.name());
            }
        }
    }
}
