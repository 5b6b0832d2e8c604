package org.amberyard.report.papers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import org.amberyard.report.document.DataTable;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class CostOfATonTest {
    private static final ExamplePapers EXAMPLE = new ExamplePapers();
    private static PaperInput in;

    @BeforeAll
    static void evaluate() {
        in = EXAMPLE.in(EXAMPLE.study(), PaperChoices.STANDARD);
    }

    private static DataTable table(GrantTable of, int place) {
        return of.of(in).get(place);
    }

    private static BigDecimal figure(DataTable table, DataTable.Row row, String heading) {
        return (BigDecimal) row.cells().get(ExamplePapers.column(table, heading));
    }

    @Test
    void theCostOfATonIsThatOfTheResultsToTheDigitsThatItsTonsBear() {
        DataTable printed = table(GrantTable.T8, 0);
        List<ResultLine> lines = ResultLine.of(in, "cost_effectiveness");
        assertEquals(lines.size() + 4, printed.rows().size(), "the grant that is applied for has rows of its own");
        for (int i = 0; i < lines.size(); i++) {
            DataTable.Row row = printed.rows().get(i);
            assertEquals(lines.get(i).number("cost").orElseThrow(), figure(printed, row, "Cost").doubleValue(), 0.505);
            assertEquals(lines.get(i).text("measure"), row.cells().get(0));
            assertEquals(row.cells().get(ExamplePapers.column(printed, "Money")).equals("capital") ? "capital" : "all programmes' money", lines.get(i).text(
                    "basis"));
            Object cost = row.cells().get(ExamplePapers.column(printed, "Cost of a short ton (USD)"));
            if (lines.get(i).text("measure").startsWith("PM2.5")) {
                assertEquals(CostOfATon.NOT_MEANINGFUL, cost, "0.0003 tons bear no cost of a ton");
            } else {
                double exact = lines.get(i).number("cost_per_short_ton").orElseThrow();
                assertEquals(exact, ((BigDecimal) cost).doubleValue(), 0.0051 * exact);
                assertTrue(((BigDecimal) cost).stripTrailingZeros().precision() <= 3, cost.toString());
            }
        }
    }

    @Test
    void aCostHasNoMoreDigitsThanItsTons() {
        assertEquals(new BigDecimal("37200000"), CostOfATon.printed(37_151_788, new BigDecimal("0.129")));
        assertEquals(new BigDecimal("118000"), CostOfATon.printed(118_004, new BigDecimal("1234.5")));
        assertEquals(new BigDecimal("37000000"), CostOfATon.printed(37_151_788, new BigDecimal("0.0012")));
        assertEquals("not meaningful", CostOfATon.printed(14_670_748_633.0, new BigDecimal("0.0003")));
        assertEquals("not meaningful", CostOfATon.printed(5e12, new BigDecimal("0.000")));
        assertEquals("not meaningful", CostOfATon.printed(Double.NaN, BigDecimal.ZERO));
        assertEquals("not meaningful", CostOfATon.printed(-5, new BigDecimal("-1.25")));
    }
}
