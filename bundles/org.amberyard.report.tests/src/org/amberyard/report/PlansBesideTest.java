package org.amberyard.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.testsupport.SampleDistrict;
import org.junit.jupiter.api.Test;

class PlansBesideTest {

    private final StudyResult small = SampleDistrict.evaluated(SampleDistrict.small());
    private final List<PlansBeside.Row> rows = PlansBeside.of(small, UnitSystem.US);

    private PlansBeside.Row row(String section, String figure) {
        return rows.stream().filter(r -> r.section().equals(section) && r.figure().equals(figure)).findFirst().orElseThrow();
    }

    @Test
    void everyRowHasAValueForEveryPlanOrNone() {
        assertTrue(rows.stream().allMatch(r -> r.values().size() == small.plans().size()));
        assertEquals(rows.size(), rows.stream().map(r -> r.section() + "|" + r.figure() + "|" + r.unit()).distinct().count());
    }

    @Test
    void presentCostsAreThoseOfThePlans() {
        assertEquals(small.plans().stream().map(p -> (Object) p.measures().presentCost()).toList(),
                row("Plans in single figures", "Present cost").values());
    }

    @Test
    void categoriesAddUpToThePresentCost() {
        for (int plan = 0; plan < small.plans().size(); plan++) {
            int place = plan;
            double sum = rows.stream().filter(r -> r.section().equals("Present cost by category"))
                    .mapToDouble(r -> (Double) r.values().get(place)).sum();
            assertEquals(small.plans().get(plan).measures().presentCost(), sum, 1e-6);
        }
    }

    @Test
    void cashStandsByYear() {
        PlanResult plan = small.plans().get(1);
        int year = small.input().baseYear();
        assertEquals(plan.ledger().amount(0, CostCategory.BUS_SALE),
                (Double) row("Cash by year", year + ": Bus sales").values().get(1), 1e-9);
    }

    @Test
    void onlyWhatIsNotTheSameDiffers() {
        assertTrue(row("Plans in single figures", "Present cost").differs());
        assertFalse(row("Plans in single figures", "Distance").differs());
    }
}
