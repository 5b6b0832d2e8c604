package org.amberyard.study.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.amberyard.core.plan.PlanOutcome;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.progress.Progress;
import org.amberyard.model.depot.ChargingPolicy;
import org.amberyard.model.funding.AwardStatus;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.meta.FieldWords;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.study.GivenOutFigure;
import org.amberyard.model.study.Narrative;
import org.amberyard.model.study.Study;
import org.amberyard.study.StudyCompiler;
import org.amberyard.study.StudyEvaluator;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EObject;
import org.junit.jupiter.api.Test;

/** Fields that no result reads keep a what-if up to date, and no others do. */
class FingerprintFieldsTest {
    private static final int REBATE = 2;

    /** A field of an element. */
    private record Field(EObject element, EAttribute attribute) {
        /** One element for each attribute that has a value of its own. */
        static List<Field> all(Study study) {
            List<EObject> elements = new ArrayList<>(List.of(study));
            study.eAllContents().forEachRemaining(elements::add);
            Set<String> seen = new HashSet<>();
            return elements.stream().flatMap(e -> e.eClass().getEAllAttributes().stream().filter(a -> a.isChangeable() && !a.isDerived()
                    && !a.isMany()).filter(a -> seen.add(e.eClass().getName() + "." + a.getName())).map(a -> new Field(e, a))).toList();
        }

        boolean movesNoFigure() {
            return StudyFingerprint.NO_FIGURE.contains(attribute) || element instanceof Narrative || element instanceof GivenOutFigure;
        }

        Object other() {
            Object now = element.eGet(attribute);
            if (attribute.getEType() instanceof EEnum words) {
                return words.getELiterals().stream().map(l -> (Object) l.getInstance()).filter(v -> v != now).findFirst().orElse(now);
            }
            if (FieldWords.isNumber(attribute)) {
                return FieldWords.number(attribute, (now instanceof Number number ? number.doubleValue() : 0) + 1);
            }
            return now instanceof Boolean yes ? (Object) !yes : now + " changed";
        }

        String name() {
            return element.eClass().getName() + "." + attribute.getName();
        }
    }

    @Test
    void eachOtherFieldCounts() throws StudyFileException {
        Study study = ExampleWhatIf.example();
        String print = StudyFingerprint.of(study);
        Set<String> silent = new HashSet<>();
        List<Field> fields = Field.all(study);
        for (Field field : fields) {
            Object now = field.element().eGet(field.attribute());
            field.element().eSet(field.attribute(), field.other());
            if (StudyFingerprint.of(study).equals(print)) {
                silent.add(field.name());
            }
            field.element().eSet(field.attribute(), now);
        }
        assertEquals(print, StudyFingerprint.of(study));
        assertTrue(fields.size() > 300, fields.size() + " fields");
        Set<String> meant = new HashSet<>();
        fields.stream().filter(Field::movesNoFigure).forEach(f -> meant.add(f.name()));
        assertEquals(meant, silent);
        assertTrue(meant.containsAll(Set.of("Programme.status", "Programme.letter", "Programme.restrictions", "Plan.ownStatus", "Plan.ownLetter")),
                meant.toString());
    }

    @Test
    void whatDoesNotCountReachesNoInputOfTheResults() throws StudyFileException {
        Study study = ExampleWhatIf.example();
        StudyResult base = new StudyEvaluator().evaluate(StudyCompiler.compile(study));
        for (Field field : Field.all(study).stream().filter(f -> StudyFingerprint.NO_FIGURE.contains(f.attribute())).toList()) {
            Object now = field.element().eGet(field.attribute());
            field.element().eSet(field.attribute(), field.other());
            assertNotEquals(now, field.element().eGet(field.attribute()));
            assertEquals(base.input(), StudyCompiler.compile(study), field.name());
            field.element().eSet(field.attribute(), now);
        }
    }

    /** Two routes of the example and one uncertain price. */
    private static Study small() throws StudyFileException {
        Study study = ExampleWhatIf.without(300);
        study.getPlans().subList(REBATE + 1, study.getPlans().size()).clear();
        study.getDepot().setChargingPolicy(ChargingPolicy.AT_ONCE);
        ExampleWhatIf.thin(study, 9, 2);
        ExampleWhatIf.add(study, "Diesel price", "FuelPrice", "diesel", "pricePerL");
        return study;
    }

    private static Map<RunPart, double[][]> drawn(Study study, StudyResult base) {
        WhatIfRun run = new WhatIfRun(study, base, 2, Optional.empty());
        run.run(Progress.NONE, soFar -> {});
        return run.saved().parts();
    }

    @Test
    void resultsAndDrawsStayWhatTheyAre() throws StudyFileException {
        Study before = small();
        Study after = small();
        after.getProgrammes().forEach(p -> {
            p.setStatus(p.getStatus() == AwardStatus.PLANNED ? AwardStatus.APPLIED : AwardStatus.PLANNED);
            p.setLetter("Another letter");
            p.setRestrictions("Other restrictions");
        });
        after.getPlans().forEach(FingerprintFieldsTest::secureOtherwise);
        StudyResult base = new StudyEvaluator().evaluate(StudyCompiler.compile(before));
        StudyResult changed = new StudyEvaluator().evaluate(StudyCompiler.compile(after));
        assertEquals(base.plans().stream().map(PlanOutcome::of).toList(), changed.plans().stream().map(PlanOutcome::of).toList());
        Map<RunPart, double[][]> draws = drawn(before, base);
        Map<RunPart, double[][]> drawsAfter = drawn(after, changed);
        assertEquals(draws.keySet(), drawsAfter.keySet());
        draws.forEach((part, columns) -> assertTrue(Arrays.deepEquals(columns, drawsAfter.get(part)), part.name()));
        assertEquals(StudyFingerprint.of(before), StudyFingerprint.of(after));
    }

    private static void secureOtherwise(Plan plan) {
        plan.setOwnStatus(plan.getOwnStatus() == AwardStatus.PLANNED ? AwardStatus.APPLIED : AwardStatus.PLANNED);
        plan.setOwnLetter("Another resolution");
    }
}
