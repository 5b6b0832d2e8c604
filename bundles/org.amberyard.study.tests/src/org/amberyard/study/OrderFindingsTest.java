package org.amberyard.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.amberyard.core.plan.FleetEvent;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.study.Study;
import org.amberyard.model.validation.Finding;
import org.junit.jupiter.api.Test;

/** Buses that come at the base date itself are on order or too late, and so are those whose delivery takes longer than is left. */
class OrderFindingsTest {

    private static List<Finding> findings(Study study, StudyResult result, int plan) {
        return new OrderFindings(study, result, plan).list();
    }

    @Test
    void ordersBeforeTheBaseDateAreNamed() throws Exception {
        Study study = ExampleStudy.load();
        study.getSettings().setHorizonYears(4);
        study.getVehicleTypes().forEach(t -> t.setDeliveryMonths(25));
        StudyResult result = new StudyEvaluator().evaluate(StudyCompiler.compile(study));
        List<String> early = result.plans().get(1).fleet().events().stream().filter(FleetEvent.Bought.class::isInstance)
                .map(FleetEvent.Bought.class::cast).filter(b -> b.year() <= 2).map(b -> b.vehicle().unit()).toList();
        Finding found = findings(study, result, 1).get(0);
        assertTrue(early.size() > 4);
        assertTrue(found.message().startsWith("Plan “Electric in stages”: " + early.size() + " buses must be ordered before the base date "
                + "2026-01-01, the first by 202"), found.message());
        assertTrue(found.message().endsWith(" and " + (early.size() - 4) + " more. Where they are not on order yet, move the purchase."),
                found.message());
        assertSame(study.getPlans().get(1), found.element());
    }

    @Test
    void ordersFromTheBaseDateOnAreInTime() throws Exception {
        Study study = ExampleStudy.load();
        study.getSettings().setHorizonYears(4);
        study.getVehicleTypes().forEach(t -> t.setDeliveryMonths(0));
        assertEquals(List.of(), findings(study, new StudyEvaluator().evaluate(StudyCompiler.compile(study)), 1));
    }
}
