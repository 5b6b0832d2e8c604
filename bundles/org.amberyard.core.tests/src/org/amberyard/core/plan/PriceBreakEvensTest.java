package org.amberyard.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.money.BreakEven;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.progress.Progress;
import org.junit.jupiter.api.Test;

class PriceBreakEvensTest {
    private final StudyInput study = TinyDistrict.study();
    private final StudyResult result = StudyEvaluation.of(study, DutyTable.of(study.duty()));
    private final List<PriceBreakEvens.OfLever> all = PriceBreakEvens.of(result, 1, Progress.NONE);

    private static double difference(StudyInput edited) {
        StudyResult at = StudyEvaluation.of(edited, DutyTable.of(edited.duty()));
        return at.plans().get(1).measures().presentCost() - at.plans().get(0).measures().presentCost();
    }

    /** Each value put into the whole evaluation makes the plans cost the same. */
    @Test
    void atABreakEvenThePlansCostTheSame() {
        int values = 0;
        for (PriceBreakEvens.OfLever found : all) {
            for (BreakEven.Stretch stretch : found.at().stretches().subList(0, found.at().stretches().size() - 1)) {
                if (!stretch.jumps()) {
                    assertEquals(0, difference(found.lever().set().apply(study, stretch.to())), 0.02, found.lever().name());
                    values++;
                }
            }
        }
        assertTrue(values >= 3, values + " of " + all.size());
    }

    /** Costs are linear in the price of a fuel, so the value follows from the fuel that the plans burn. */
    @Test
    void theDieselPriceIsThatOfAStraightLine() {
        PriceBreakEvens.OfLever diesel = all.stream().filter(f -> f.lever().name().equals("diesel")).findFirst().orElseThrow();
        double fuel = result.baseline().ledger().presentValue(CostCategory.FUEL) - result.plans().get(1).ledger().presentValue(CostCategory.FUEL)
                + result.baseline().ledger().presentValue(CostCategory.HEATER_FUEL)
                - result.plans().get(1).ledger().presentValue(CostCategory.HEATER_FUEL);
        double expected = diesel.lever().present() * (1 + difference(study) / fuel);
        if (expected < diesel.lever().to()) {
            assertEquals(expected, diesel.at().values().get(0), 1e-6);
        } else {
            assertEquals(List.of(), diesel.at().values());
        }
    }

    @Test
    void theWayFromPlanToPlanAddsUp() {
        PlanDifference way = PlanDifference.of(result.baseline(), result.plans().get(1));
        assertEquals(way.to() - way.from(), way.steps().stream().mapToDouble(PlanDifference.Step::change).sum(), 1e-6);
        assertNotEquals(0, way.steps().size());
        assertEquals(result.plans().get(1).measures().presentCost(), way.to(), 0);
    }
}
