package org.amberyard.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.amberyard.core.plan.FillRule;
import org.amberyard.core.plan.FillRule.Pace;
import org.amberyard.core.plan.FillRule.PortRule;
import org.amberyard.core.plan.PlanFilling;
import org.amberyard.core.plan.Role;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.funding.Programme;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.plans.PortPurchase;
import org.amberyard.model.plans.Replacement;
import org.amberyard.model.study.Study;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Fills the example's electric plan; base year 2026. */
class PlanFillTest {
    private static final PortRule TWO_BUSES_A_PORT = new PortRule(OptionalInt.of(0), 2);
    private static StudyResult result;
    private Study study;
    private Plan plan;

    @BeforeAll
    static void evaluate() throws Exception {
        result = new StudyEvaluator().evaluate(StudyCompiler.compile(ExampleStudy.load()));
    }

    @BeforeEach
    void load() throws Exception {
        study = ExampleStudy.load();
        plan = study.getPlans().get(1);
    }

    private PlanFill fill(FillRule rule, Optional<Programme> programme) {
        return PlanFill.of(study, plan, result, rule, programme);
    }

    private static FillRule threeAYear(Set<Role> roles, PortRule ports) {
        return new FillRule(Pace.PER_YEAR, 3, 1, 14, true, roles, ports);
    }

    private List<Replacement> of(int year) {
        return plan.getReplacements().stream().filter(r -> r.getYear() == year).toList();
    }

    @Test
    void theStepsOfFilledPlacesAreReplacedAndOthersStay() {
        PlanFill fill = fill(threeAYear(Set.of(Role.ROUTE), PortRule.NONE), Optional.empty());
        List<PortPurchase> ports = List.copyOf(plan.getPortPurchases());
        Set<String> filled = fill.filling().steps().stream().map(s -> fill.bus(s.place()).getName()).collect(Collectors.toSet());
        List<Replacement> others = plan.getReplacements().stream().filter(r -> !filled.contains(r.getBus().getName())).toList();
        assertFalse(others.isEmpty());

        fill.write();

        assertTrue(plan.getReplacements().containsAll(others));
        assertEquals(filled.size() + others.size(), plan.getReplacements().size());
        for (PlanFilling.Step step : fill.filling().steps()) {
            Replacement written = of(2026 + step.year()).stream().filter(r -> r.getBus() == study.getBuses().get(step.place()))
                    .findFirst().orElseThrow();
            assertEquals(study.getVehicleTypes().get(step.type()), written.getNewType());
            assertNull(written.getCascadeTo());
        }
        assertEquals(ports, plan.getPortPurchases());
    }

    @Test
    void portsTakeThePlaceOfThePlansOwn() {
        PlanFill fill = fill(threeAYear(Set.of(Role.ROUTE), TWO_BUSES_A_PORT), Optional.empty());
        fill.write();
        int buses = fill.filling().steps().size();
        assertEquals((buses + 1) / 2, plan.getPortPurchases().stream().mapToInt(PortPurchase::getCount).sum());
        assertTrue(plan.getPortPurchases().stream().allMatch(p -> p.getPortType() == study.getDepot().getPortTypes().get(0)));
        assertEquals(2027, plan.getPortPurchases().get(0).getYear());
    }

    @Test
    void aProgrammePaysWithinItsYearsAndUpToItsMostBuses() {
        Programme payer = study.getProgrammes().get(0);
        payer.setFirstYear(2028);
        payer.setLastYear(2030);
        payer.setMaxBuses(4);
        fill(threeAYear(Set.of(Role.ROUTE), TWO_BUSES_A_PORT), Optional.of(payer)).write();
        List<Replacement> paid = plan.getReplacements().stream().filter(r -> !StepFunding.of(r).isEmpty()).toList();
        assertEquals(4, paid.size());
        assertTrue(paid.stream().allMatch(r -> r.getYear() >= 2028 && r.getYear() <= 2029), paid.toString());
        for (PortPurchase ports : plan.getPortPurchases()) {
            boolean pays = payer.getInfrastructureShare() > 0 && ports.getYear() >= 2028 && ports.getYear() <= 2030;
            assertEquals(pays, ports.getProgrammes().contains(payer));
        }
    }

    @Test
    void busesThatKeepTheirProgrammeCountAgainstItsMost() {
        Programme payer = study.getProgrammes().get(0);
        Replacement spare = plan.getReplacements().stream().filter(r -> r.getBus().getName().equals("B21")).findFirst()
                .orElseThrow();
        spare.setNewType(study.getVehicleTypes().stream().filter(t -> t.getName().equals("Electric C 150")).findFirst()
                .orElseThrow());
        spare.getProgrammes().add(payer);
        payer.setMaxBuses(3);
        fill(threeAYear(Set.of(Role.ROUTE), PortRule.NONE), Optional.of(payer)).write();
        assertEquals(3, plan.getReplacements().stream().filter(r -> StepFunding.of(r).contains(payer)).count());
    }

    /** B06 moves to the place of B20 in 2029; when a new bus takes that place in that year, B06 is sold. */
    @Test
    void anOldBusIsSoldWhereANewOneTakesItsNextPlace() {
        FillRule spares = new FillRule(Pace.PER_YEAR, 10, 3, 3, false, Set.of(Role.SPARE, Role.ACTIVITY), PortRule.NONE);
        fill(spares, Optional.empty()).write();
        assertTrue(of(2029).stream().anyMatch(r -> r.getBus().getName().equals("B20")));
        Replacement b06 = of(2029).stream().filter(r -> r.getBus().getName().equals("B06")).findFirst().orElseThrow();
        assertNull(b06.getCascadeTo());
        assertTrue(StudyFindings.canEvaluate(StudyFindings.of(study)), StudyFindings.of(study).toString());
    }

    @Test
    void theWordsTellWhatIsWrittenWhatGoesAndWhatIsLeft() {
        String words = String.join("\n", FillWords.of(fill(new FillRule(Pace.PER_YEAR, 3, 1, 2, true, Set.of(Role.ROUTE),
                TWO_BUSES_A_PORT), Optional.of(study.getProgrammes().get(0)))));
        assertTrue(words.startsWith("6 buses are replaced: 3 in 2027, 3 in 2028.\nBought: "), words);
        assertTrue(words.contains("\n7 ports AC 19.2 kW: 2 in 2027, 2 in 2028, 1 in 2029, 1 in 2030, 1 in 2032.\n"), words);
        assertTrue(words.contains("Programme " + study.getProgrammes().get(0).getName() + " pays for "), words);
        assertTrue(words.contains("In their place go 6 steps that the plan has for these buses and "), words);
        assertTrue(words.contains(" – the turn would come after 2028."), words);
        assertTrue(words.contains(" – no electric type does the work with an aged pack."), words);
    }

    @Test
    void aRuleThatReplacesNoBusSaysSo() {
        PlanFill none = fill(new FillRule(Pace.AT_AGE, 60, 0, 14, true, Set.of(Role.ROUTE), PortRule.NONE), Optional.empty());
        assertTrue(none.isEmpty());
        assertEquals("The rule replaces no bus.", FillWords.of(none).get(0));
    }
}
