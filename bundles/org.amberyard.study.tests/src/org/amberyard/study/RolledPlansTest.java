package org.amberyard.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.plans.OneOffCost;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.plans.PlansFactory;
import org.amberyard.model.plans.PortPurchase;
import org.amberyard.model.plans.WorkOrder;
import org.amberyard.model.study.Study;
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
}
