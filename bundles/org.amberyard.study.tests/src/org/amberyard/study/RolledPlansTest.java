package org.amberyard.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.amberyard.model.common.Sourced;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.plans.OneOffCost;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.plans.PlansFactory;
import org.amberyard.model.plans.PortPurchase;
import org.amberyard.model.plans.Replacement;
import org.amberyard.model.plans.WorkOrder;
import org.amberyard.model.study.Study;
import org.amberyard.model.validation.Severity;
import org.amberyard.study.roll.YearRoll;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;

/** Steps of plans in a study that is rolled. */
class RolledPlansTest {
    private static final int LIKE_FOR_LIKE = 0;
    private static final int ELECTRIC = 1;
    private static final int TO = 2028;

    private static boolean tells(YearRoll roll, String words) {
        return roll.changes().stream().anyMatch(c -> c.words().equals(words));
    }

    private static void oneOff(Plan plan, String name, int year) {
        OneOffCost cost = PlansFactory.eINSTANCE.createOneOffCost();
        cost.setName(name);
        cost.setYear(year);
        cost.setAmount(10_000);
        plan.getOneOffCosts().add(cost);
    }

    @Test
    void whatStandsIsNotBoughtAgainLaterByOtherPlans() throws StudyFileException {
        Study study = ExampleStudy.load();
        Plan done = study.getPlans().get(ELECTRIC);
        Plan other = study.getPlans().get(LIKE_FOR_LIKE);
        List<PortPurchase> ports = done.getPortPurchases().stream().filter(p -> p.getYear() < TO).toList();
        List<WorkOrder> works = done.getWorkOrders().stream().filter(w -> w.getYear() < TO).toList();
        assertTrue(!ports.isEmpty() && !works.isEmpty());
        ports.forEach(p -> other.getPortPurchases().add(later(p)));
        works.forEach(w -> {
            WorkOrder again = EcoreUtil.copy(w);
            again.setYear(2029);
            other.getWorkOrders().add(again);
        });
        oneOff(done, "Permit", 2026);
        oneOff(other, "Permit", 2029);
        oneOff(other, "Permit", 2032);
        YearRoll roll = YearRollTest.rolled(study, TO, true, ELECTRIC, Set.of());
        Plan now = roll.study().getPlans().get(LIKE_FOR_LIKE);
        int standing = ports.stream().mapToInt(PortPurchase::getCount).sum();
        assertEquals(standing + ports.size(), now.getPortPurchases().stream().mapToInt(PortPurchase::getCount).sum(),
                "of each purchase one more than stands");
        assertEquals(works.size(), now.getWorkOrders().size());
        assertTrue(now.getWorkOrders().stream().allMatch(w -> w.getYear() < TO), "they stand");
        assertEquals(List.of(2032), now.getOneOffCosts().stream().filter(o -> o.getName().equals("Permit")).map(OneOffCost::getYear).toList());
        assertTrue(tells(roll, "One-off cost Permit of plan Like for like goes: paid, by the plan that was carried out"), roll.changes().toString());
    }

    private static PortPurchase later(PortPurchase purchase) {
        PortPurchase again = EcoreUtil.copy(purchase);
        again.setYear(2029);
        again.setCount(purchase.getCount() + 1);
        return again;
    }

    private static Replacement step(Plan plan, Bus bus, int year, Bus to) {
        Replacement step = PlansFactory.eINSTANCE.createReplacement();
        step.setYear(year);
        step.setBus(bus);
        step.setNewType(bus.getType());
        step.setCascadeTo(to);
        plan.getReplacements().add(step);
        return step;
    }

    private static List<String> errors(Study study) {
        return StudyFindings.of(study).stream().filter(f -> f.severity() == Severity.ERROR).map(f -> f.message()).toList();
    }

    @Test
    void aStepWhosePlaceIsFilledInTheNewBaseYearIsNotMovedThere() throws StudyFileException {
        Study study = ExampleStudy.load();
        Plan done = study.getPlans().get(ELECTRIC);
        Plan other = study.getPlans().get(LIKE_FOR_LIKE);
        Bus from = YearRollTest.bus(study, "Z1", 2012);
        Bus to = YearRollTest.bus(study, "Z2", 2012);
        Bus twice = YearRollTest.bus(study, "Z3", 2012);
        Bus moves = YearRollTest.bus(study, "Z4", 2012);
        Bus into = YearRollTest.bus(study, "Z5", 2012);
        step(done, to, TO, null);
        step(done, twice, TO, null);
        Set<Sourced> late = Set.of(step(done, from, 2027, to), step(done, twice, 2026, null));
        step(other, moves, 2027, into);
        step(other, into, TO, null);
        assertEquals(List.of(), errors(study));
        YearRoll roll = YearRollTest.rolled(study, TO, true, ELECTRIC, late);
        assertEquals(List.of(), roll.problems());
        assertEquals(List.of(), errors(roll.study()));
        assertEquals(List.of("Replacement 2027 Z1 of plan Electric in stages is not moved to 2028 and counts as carried out: another step of "
                + "that year fills the place to which its old bus moves; clear one of the two before rolling.",
                "Replacement 2026 Z3 of plan Electric in stages is not moved to 2028 and counts as carried out: another step of that year "
                        + "replaces its bus; take out one of the two before rolling."),
                roll.remarks().stream().filter(r -> r.contains("is not moved")).toList());
        Replacement sold = roll.study().getPlans().get(LIKE_FOR_LIKE).getReplacements().stream()
                .filter(r -> r.getBus().getName().equals("Z4")).findFirst().orElseThrow();
        assertEquals(TO, sold.getYear());
        assertNull(sold.getCascadeTo(), "Z5 has its own step then");
    }
}
