package org.amberyard.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.fleet.BusRecord;
import org.amberyard.model.fleet.FleetFactory;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.plans.OneOffCost;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.plans.PlansFactory;
import org.amberyard.model.plans.Replacement;
import org.amberyard.model.study.Study;
import org.amberyard.model.validation.Severity;
import org.amberyard.model.whatif.Effect;
import org.amberyard.model.whatif.InputCorrelation;
import org.amberyard.model.whatif.Scenario;
import org.amberyard.model.whatif.ScenarioChange;
import org.amberyard.model.whatif.Shape;
import org.amberyard.model.whatif.UncertainInput;
import org.amberyard.model.whatif.WhatIf;
import org.amberyard.model.whatif.WhatifFactory;
import org.amberyard.study.roll.YearRoll;
import org.junit.jupiter.api.Test;

/** Rows of buses of a study that is rolled, and what points at them. */
class RolledFleetTest {
    private static final int ELECTRIC = 1;
    private static final int TO = 2028;

    private static Replacement step(Study study, Bus bus, int year) {
        Replacement step = PlansFactory.eINSTANCE.createReplacement();
        step.setYear(year);
        step.setBus(bus);
        study.getPlans().get(ELECTRIC).getReplacements().add(step);
        return step;
    }

    private static UncertainInput input(Study study, String kind, String element, String field, Effect effect, double low) {
        UncertainInput input = WhatifFactory.eINSTANCE.createUncertainInput();
        input.setName(element + " " + field);
        input.setKind(kind);
        input.setElement(element);
        input.setField(field);
        input.setEffect(effect);
        input.setShape(Shape.TRIANGULAR);
        input.setLow(low);
        input.setLikely(low + 0.1);
        input.setHigh(low + 0.2);
        study.getWhatIf().getInputs().add(input);
        return input;
    }

    private static ScenarioChange change(String kind, String element, String field) {
        ScenarioChange change = WhatifFactory.eINSTANCE.createScenarioChange();
        change.setKind(kind);
        change.setElement(element);
        change.setField(field);
        change.setEffect(Effect.TIMES);
        change.setNumber(1.1);
        return change;
    }

    private static List<String> errors(Study study) {
        return StudyFindings.of(study).stream().filter(f -> f.severity() == Severity.ERROR).map(f -> f.message()).toList();
    }

    private static Bus row(Study study, String name) {
        return study.getBuses().stream().filter(b -> b.getName().equals(name)).findFirst().orElseThrow();
    }

    @Test
    void whatIfFollowsWhatItPointsAtOrGoesWithIt() throws StudyFileException {
        Study study = ExampleStudy.load();
        WhatIf whatIf = study.getWhatIf();
        int inputs = whatIf.getInputs().size();
        step(study, YearRollTest.bus(study, "Z1", 2012), 2027);
        OneOffCost permit = PlansFactory.eINSTANCE.createOneOffCost();
        permit.setName("Permit");
        permit.setYear(2026);
        permit.setAmount(5000);
        Plan plan = study.getPlans().get(ELECTRIC);
        plan.getOneOffCosts().add(permit);
        UncertainInput gone = input(study, "OneOffCost", "Permit", "amount", Effect.TIMES, 0.9);
        input(study, "Bus", "Z1", "otherKmPerYear", Effect.TIMES, 0.9);
        UncertainInput place = input(study, "Bus", "B01", "otherKmPerYear", Effect.TIMES, 0.9);
        InputCorrelation pair = WhatifFactory.eINSTANCE.createInputCorrelation();
        pair.setFirst(gone);
        pair.setSecond(place);
        whatIf.getCorrelations().add(pair);
        whatIf.setGridAcross(place);
        whatIf.setGridUpward(gone);
        int pairs = whatIf.getCorrelations().size();
        Scenario scenario = WhatifFactory.eINSTANCE.createScenario();
        scenario.setName("Other");
        scenario.getChanges().addAll(List.of(change("Bus", "B01", "otherKmPerYear"), change("Replacement", "Electric in stages / 2027 B01", "usedPrice"),
                change("Replacement", "Like for like / 2034 B03", "usedPrice")));
        Replacement later = step(study, row(study, "B03"), 2034);
        study.getPlans().get(0).getReplacements().add(later);
        whatIf.getScenarios().add(scenario);
        assertEquals(List.of(), errors(study));
        YearRoll roll = YearRollTest.rolled(study, TO, true, ELECTRIC, Set.of());
        assertEquals(List.of(), errors(roll.study()));
        WhatIf now = roll.study().getWhatIf();
        assertEquals(inputs + 1, now.getInputs().size());
        assertEquals("B01-2", now.getInputs().get(inputs).getElement());
        assertEquals(pairs - 1, now.getCorrelations().size());
        assertTrue(now.getGridAcross() == now.getInputs().get(inputs) && now.getGridUpward() == null, "the grid loses the input that goes");
        assertTrue(roll.changes().stream().anyMatch(c -> c.field().equals("Grid upward") && c.before().equals("Permit amount")));
        List<ScenarioChange> left = now.getScenarios().get(now.getScenarios().size() - 1).getChanges();
        assertEquals("B01-2", left.get(0).getElement());
        assertTrue(roll.changes().stream().anyMatch(c -> c.words().endsWith("Permit amount goes: what it points at has gone")), "it is told");
        assertTrue(left.stream().noneMatch(c -> c.getElement().contains("2027")), "the step is over");
    }

    @Test
    void anErrorOfTheNewStudyIsTold() throws StudyFileException {
        Study study = ExampleStudy.load();
        Bus bus = YearRollTest.bus(study, "Z1", 2022);
        bus.setMeasuredUpkeepPerKm(0.5);
        input(study, "Bus", "Z1", "measuredUpkeepPerKm", Effect.PLUS, -0.1);
        assertEquals(List.of(), errors(study));
        YearRoll roll = YearRollTest.rolled(study, TO, true, ELECTRIC, Set.of());
        assertEquals(1, roll.problems().size(), roll.problems().toString());
        assertTrue(roll.remarks().get(0).startsWith("To be put right in the new study: Uncertain input Z1 measuredUpkeepPerKm"), roll.remarks().get(0));
    }

    @Test
    void aBusThatTheFleetGrewByStaysTheSame() throws StudyFileException {
        Study study = ExampleStudy.load();
        Bus grown = YearRollTest.bus(study, "G27", 2027);
        grown.setVin("4DRBUC8N0RB000027");
        grown.setModelYear(2026);
        grown.setPlannedRetirementYear(2034);
        YearRoll roll = YearRollTest.rolled(study, TO, true, ELECTRIC, Set.of());
        Bus now = row(roll.study(), "G27");
        assertEquals("4DRBUC8N0RB000027", now.getVin());
        assertEquals(2026, now.getModelYear());
        assertEquals(2034, now.getPlannedRetirementYear());
        YearRollTest.assertSameYears(roll, roll.study(), 2, 15);
    }

    /** Z1 moves to the place of Z2; its own place is filled in 2030. */
    private static Study moving() throws StudyFileException {
        Study study = ExampleStudy.load();
        Bus leaves = YearRollTest.bus(study, "Z1", 2022);
        leaves.setVin("4DRBUC8N0RB000001");
        leaves.setMeasuredUpkeepPerKm(0.9);
        leaves.setPlannedRetirementYear(TO);
        BusRecord record = FleetFactory.eINSTANCE.createBusRecord();
        record.setBus(leaves);
        study.getBusRecords().add(record);
        step(study, leaves, 2027).setCascadeTo(YearRollTest.bus(study, "Z2", 2012));
        step(study, leaves, 2030).setNewType(leaves.getType());
        return study;
    }

    @Test
    void nothingOfABusThatMovesIsLeftInItsPlace() throws StudyFileException {
        Study study = moving();
        YearRoll roll = YearRollTest.rolled(study, TO, false, ELECTRIC, Set.of());
        assertEquals(List.of(), errors(roll.study()));
        Bus moved = row(roll.study(), "Z1");
        assertEquals(study.getBuses().size() - 1, roll.study().getBuses().indexOf(moved), "in the row of Z2");
        assertEquals(TO, moved.getPlannedRetirementYear(), "it is yet to retire at the start of the new base year");
        Bus place = row(roll.study(), "Z1b");
        assertNull(place.getVin());
        assertEquals(0, place.getMeasuredUpkeepPerKm());
        assertEquals(0, place.getPlannedRetirementYear());
        assertTrue(roll.study().getBusRecords().stream().noneMatch(r -> r.getBus() == place));
        assertTrue(roll.changes().stream().anyMatch(c -> c.words().equals("Bus record Z1 goes: the bus that it told of is no longer there")),
                roll.changes().toString());
        YearRollTest.assertSameYears(roll, roll.study(), 2, 12);
        YearRoll again = YearRollTest.rolled(roll.study(), TO + 1, false, ELECTRIC, Set.of());
        Bus still = row(again.study(), "Z1b");
        assertEquals(TO + 1 + 15, still.getInServiceYear(), "after the end of the study, however often it is rolled");
    }
}
