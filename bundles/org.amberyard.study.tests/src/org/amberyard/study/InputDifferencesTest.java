package org.amberyard.study;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.study.Study;
import org.amberyard.study.InputDifferences.Difference;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class InputDifferencesTest {

    private Study study;
    private Study other;

    @BeforeEach
    void load() throws StudyFileException {
        study = ExampleStudy.load();
        other = StudyFile.copy(study);
    }

    private List<Difference> differences() {
        return InputDifferences.of(List.of(study, other), study);
    }

    @Test
    void aCopyDoesNotDiffer() {
        assertEquals(List.of(), differences());
    }

    @Test
    void aValueIsToldWithItsUnitInBoth() {
        other.getSettings().setDiscountRate(0.07);
        String here = FieldFormat.of(other.getSettings().eClass().getEStructuralFeature("discountRate"), study)
                .textWithUnit(study.getSettings().getDiscountRate());
        assertEquals(List.of(new Difference("settings", "Discount rate", List.of(here, "7 %"))), differences());
    }

    @Test
    void anElementThatOnlyOneHasIsTold() {
        String bus = other.getBuses().remove(other.getBuses().size() - 1).getName();
        assertEquals(new Difference("bus " + bus, "", List.of("yes", "no")),
                differences().stream().filter(d -> d.field().isEmpty()).findFirst().orElseThrow());
    }

    @Test
    void orderDoesNotCount() {
        other.getBuses().move(0, other.getBuses().size() - 1);
        assertEquals(List.of(), differences());
    }

    @Test
    void plansDifferByTheirStepsNotByTheirNames() {
        Plan plan = study.getPlans().get(1);
        Plan copy = StudyFile.copy(study).getPlans().get(1);
        copy.setName("Another");
        assertEquals(List.of(), InputDifferences.of(List.of(plan, copy), study));
        copy.getReplacements().get(0).setYear(copy.getReplacements().get(0).getYear() + 1);
        List<Difference> found = InputDifferences.of(List.of(plan, copy), study);
        assertEquals(List.of(List.of("yes", "no"), List.of("no", "yes")), found.stream().map(Difference::values).toList());
    }
}
