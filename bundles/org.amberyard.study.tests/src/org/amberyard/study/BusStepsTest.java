package org.amberyard.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.plans.Replacement;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.VehicleType;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** In the example's electric plan, B06 is replaced in 2029 and moves to the place of B20; B01 is paid for by a programme. */
class BusStepsTest {
    private Study study;
    private Plan plan;

    @BeforeEach
    void load() throws Exception {
        study = ExampleStudy.load();
        plan = study.getPlans().get(1);
    }

    private Bus bus(String name) {
        return study.getBuses().stream().filter(b -> b.getName().equals(name)).findFirst().orElseThrow();
    }

    private VehicleType type(String name) {
        return study.getVehicleTypes().stream().filter(t -> t.getName().equals(name)).findFirst().orElseThrow();
    }

    private BusSteps steps(String bus) {
        return BusSteps.of(plan, bus(bus));
    }

    private List<Integer> years(String bus) {
        return steps(bus).steps().stream().map(BusSteps.Step::year).toList();
    }

    @Test
    void theOnlyStepIsTheOldOneInAnotherYear() {
        Replacement before = steps("B06").steps().get(0).element();
        steps("B06").only(2031, type("Electric C 150")).write(plan);
        assertEquals(List.of(2031), years("B06"));
        assertSame(before, steps("B06").steps().get(0).element());
        assertEquals("Electric C 150", before.getNewType().getName());
        assertSame(bus("B20"), before.getCascadeTo());
    }

    @Test
    void ofSeveralStepsTheNearestIsChangedAndTheOthersGo() {
        steps("B06").with(2038, type("Diesel C new")).write(plan);
        assertEquals(List.of(2029, 2038), years("B06"));
        Replacement late = steps("B06").in(2038).orElseThrow().element();
        steps("B06").only(2036, type("Electric C 226")).write(plan);
        assertSame(late, steps("B06").in(2036).orElseThrow().element());
        assertEquals(List.of(2036), years("B06"));
    }

    @Test
    void aProgrammeStaysWithAnElectricBusOnly() {
        steps("B01").only(2028, type("Electric C 226")).write(plan);
        assertEquals(1, steps("B01").in(2028).orElseThrow().programmes().size());
        steps("B01").with(2028, type("Diesel C new")).write(plan);
        assertEquals(List.of(), steps("B01").in(2028).orElseThrow().programmes());
        steps("B02").only(2027, null).write(plan);
        assertEquals(List.of(), steps("B02").in(2027).orElseThrow().programmes());
    }

    @Test
    void aMovedStepTakesThePlaceOfOneThatStandsThere() {
        steps("B06").with(2031, type("Diesel C new")).with(2035, type("Diesel C new")).write(plan);
        steps("B06").moved(Set.of(2029, 2035), 2).write(plan);
        assertEquals(List.of(2031, 2037), years("B06"));
        assertEquals("Electric C 226", steps("B06").in(2031).orElseThrow().type().getName());
    }

    @Test
    void stepsThatGoLeaveThoseOfOtherBusesAlone() {
        int all = plan.getReplacements().size();
        steps("B06").none().write(plan);
        steps("B07").without(2030).write(plan);
        assertEquals(List.of(), years("B06"));
        assertEquals(List.of(2029), years("B07"));
        assertEquals(all - 1, plan.getReplacements().size());
    }

    @Test
    void aCopyOfAPlanHasItsStepsAndANameOfItsOwn() {
        Plan copy = PlanCopy.of(plan, " Second try ");
        assertEquals("Second try", copy.getName());
        assertEquals(plan.getReplacements().size(), copy.getReplacements().size());
        assertSame(plan.getReplacements().get(3).getBus(), copy.getReplacements().get(3).getBus());
        assertEquals("Electric in stages copy", PlanCopy.freeName(study, plan));
        study.getPlans().add(PlanCopy.of(plan, "Electric in stages copy"));
        assertEquals("Electric in stages copy 2", PlanCopy.freeName(study, plan));
        assertTrue(PlanCopy.isTaken(study, null, "Like for like "));
        assertTrue(!PlanCopy.isTaken(study, plan, "Electric in stages"));
    }

    @Test
    void aUsedBusOfAnotherTypeIsANewOne() {
        Replacement used = steps("B06").steps().get(0).element();
        used.setUsedAgeYears(3);
        used.setUsedPrice(150_000);
        used.setUsedHealth(0.9);
        steps("B06").moved(Set.of(2029), 1).write(plan);
        assertEquals(3, used.getUsedAgeYears(), "it is the same bus in another year");
        steps("B06").with(2030, type("Diesel C new")).write(plan);
        assertEquals(0, used.getUsedAgeYears());
        assertEquals(0, used.getUsedPrice(), 0);
        assertEquals(0, used.getUsedHealth(), 0);
    }
}
