package org.amberyard.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalInt;
import org.amberyard.core.battery.LinearFade;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.duty.SampleBus;
import org.junit.jupiter.api.Test;

/** Two buses of the invented district: the one on the long route is older. */
class RotationPreviewTest {

    @Test
    void theWornPackLastsLongerOnTheShortRoute() {
        StudyInput pack = TinyPacks.withPack(TinyDistrict.study(), SampleBus.battery(250, 0.004, 600, 0.2, new LinearFade(0.01, 0)));
        StudyInput study = TinyDistrict.withPlans(pack, pack.plans().get(0), bothElectric());
        StudyResult result = StudyEvaluation.of(study, DutyTable.of(study.duty()));
        List<RotationPreview> swaps = RotationPreview.of(result, 1);
        assertEquals(1, swaps.size());
        RotationPreview swap = swaps.get(0);
        assertEquals(2, swap.year());
        assertTrue(swap.gainYears() > 0.1);
        VehicleYear older = result.plans().get(1).fleet().inYear(2).get(1);
        double perYear = result.duty().use(1, TinyDistrict.ELECTRIC).orElseThrow().year().dischargedKwh() / 250;
        assertEquals((600 - older.vehicle().packCycles()) / perYear, swap.second().ownYears(), 0.01);
        assertTrue(swap.second().swappedYears() > swap.second().ownYears());
        assertTrue(swap.first().swappedYears() < swap.first().ownYears());
        assertEquals(List.of(), RotationPreview.of(result, 0), "engine buses have no packs");
    }

    private static PlanInput bothElectric() {
        return new PlanInput("Both", List.of(step(2, 0), step(0, 1)), TinyDistrict.electricPlan().ports(), List.of(), List.of());
    }

    private static PlanInput.Replacement step(int year, int place) {
        return new PlanInput.Replacement(year, place, OptionalInt.of(TinyDistrict.ELECTRIC), OptionalInt.empty(),
                List.of());
    }
}
