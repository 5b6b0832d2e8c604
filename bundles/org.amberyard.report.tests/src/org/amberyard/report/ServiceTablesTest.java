package org.amberyard.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.depot.ServiceInput;
import org.amberyard.core.plan.DepotInput;
import org.amberyard.core.plan.ServiceAdvice;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.testsupport.SampleDistrict;
import org.junit.jupiter.api.Test;

class ServiceTablesTest {
    private static ResultTable table(StudyResult of, String name) {
        return ResultTables.of(of, UnitSystem.US).stream().filter(t -> t.name().equals(name)).findFirst().orElseThrow();
    }

    /** The small district on a transformer of 80 kVA, of which its building takes 63. */
    private static StudyResult onASmallService() {
        StudyInput small = SampleDistrict.small();
        DepotInput depot = small.depot();
        DepotInput tight = new DepotInput(depot.ports(), depot.works(), new ServiceInput(480, 400, 80, 0.95, 60), depot.window(),
                depot.metering(), depot.alternatives(), depot.charging());
        return SampleDistrict.evaluated(new StudyInput(small.name(), small.currency(), small.baseYear(), small.years(),
                small.money(), small.duty(), small.types(), small.buses(), tight, small.prices(), small.funding(),
                small.air(), small.rules(), small.plans(), small.baseline(), small.trips()));
    }

    @Test
    void remediesStandCheapestFirstWithTheYearThatAsksForThem() {
        StudyResult result = onASmallService();
        ServiceAdvice advice = ServiceAdvice.of(result.input(), result.plans().get(1), Progress.NONE);
        ResultTable table = table(result, "service_remedies");
        assertTrue(advice.connectedFrom().isPresent() && !advice.remedies().isEmpty());
        assertEquals(advice.remedies().size(), table.rows().size());
        for (int row = 0; row < table.rows().size(); row++) {
            assertEquals("Electric in stages", table.cell(row, "plan"));
            assertEquals(String.valueOf(result.input().baseYear() + advice.connectedFrom().getAsInt()),
                    table.cell(row, "connected_from"));
            assertTrue((Double) table.cell(row, "load") <= 80 + 1e-9, "it keeps to the service");
        }
        List<Double> costs = IntStream.range(0, table.rows().size()).mapToObj(r -> (Double) table.cell(r, "cost")).toList();
        assertEquals(costs.stream().sorted().toList(), costs);
    }

    @Test
    void aServiceThatIsLargeEnoughHasNoRows() {
        assertEquals(0, table(SampleDistrict.evaluated(SampleDistrict.small()), "service_remedies").rows().size());
    }

    @Test
    void onePortDownIsToldForEachType() {
        StudyResult result = SampleDistrict.evaluated(SampleDistrict.small());
        ResultTable table = table(result, "port_outage");
        assertEquals(result.plans().stream().flatMap(p -> p.yards().stream()).filter(LastYears::charges).count(),
                table.rows().size(), "a row for each year that charges");
        for (int row = 0; row < table.rows().size(); row++) {
            assertEquals("AC 19.2 kW", table.cell(row, "port"));
            boolean ready = table.cell(row, "ready").equals("yes");
            assertEquals(ready, table.cell(row, "bus") == null);
            assertEquals(ready, table.cell(row, "morning") == null);
            assertEquals(ready, table.cell(row, "worst") == null);
        }
    }
}
