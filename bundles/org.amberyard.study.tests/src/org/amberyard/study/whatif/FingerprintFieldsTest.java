package org.amberyard.study.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
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
import org.amberyard.model.study.Study;
import org.amberyard.study.StudyCompiler;
import org.amberyard.study.StudyEvaluator;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.junit.jupiter.api.Test;

/** Fields that no result reads keep a what-if up to date, and no others do. */
class FingerprintFieldsTest {
    private static final int REBATE = 2;

    /** A field of an element, and what else it could hold. */
    private record Field(EObject element, EStructuralFeature feature, Object other) {
        /** One element for each field that something else can be put into. */
        static List<Field> all(Study study) {
            List<EObject> elements = new ArrayList<>(List.of(study));
            study.eAllContents().forEachRemaining(elements::add);
            Map<String, Field> all = new LinkedHashMap<>();
            elements.forEach(e -> e.eClass().getEAllStructuralFeatures().stream().filter(Field::isOfItsOwn).map(f -> new Field(e, f, other(e, f, elements)))
                    .filter(f -> !Objects.equals(f.other(), f.now())).forEach(f -> all.putIfAbsent(f.name(), f)));
            return List.copyOf(all.values());
        }

        /** What a container holds is an element itself. */
        static boolean isOfItsOwn(EStructuralFeature feature) {
            return feature.isChangeable() && !feature.isDerived()
                    && !(feature instanceof EReference reference && (reference.isContainment() || reference.isContainer()));
        }

        private static Object other(EObject element, EStructuralFeature feature, List<EObject> elements) {
            Object now = element.eGet(feature);
            if (feature instanceof EReference reference) {
                List<EObject> candidates = elements.stream().filter(reference.getEReferenceType()::isInstance).filter(e -> e != element).toList();
                return reference.isMany() ? otherList((List<?>) now, candidates) : candidates.stream().filter(c -> c != now).findFirst().orElse(null);
            }
            return other(now, (EAttribute) feature);
        }

        /** Without the first, else with one. */
        private static List<?> otherList(List<?> now, List<EObject> candidates) {
            return now.isEmpty() ? candidates.stream().limit(1).toList() : List.copyOf(now.subList(1, now.size()));
        }

        private static Object other(Object now, EAttribute attribute) {
            if (attribute.getEType() instanceof EEnum words) {
                return words.getELiterals().stream().map(l -> (Object) l.getInstance()).filter(v -> v != now).findFirst().orElse(now);
            }
            if (FieldWords.isNumber(attribute)) {
                return FieldWords.number(attribute, (now instanceof Number number ? number.doubleValue() : 0) + 1);
            }
            return now instanceof Boolean yes ? (Object) !yes : now + " changed";
        }

        /** What it holds, as it stays when the field is changed. */
        Object now() {
            Object now = element.eGet(feature);
            return now instanceof List<?> list ? List.copyOf(list) : now;
        }

        void set(Object value) {
            element.eSet(feature, value);
        }

        boolean movesNoFigure() {
            return StudyFingerprint.NO_FIGURE.contains(feature) || isBeside(element);
        }

        private static boolean isBeside(EObject element) {
            return element.eContainer() != null && (StudyFingerprint.BESIDE.contains(element.eContainingFeature()) || isBeside(element.eContainer()));
        }

        String name() {
            return element.eClass().getName() + "." + feature.getName();
        }
    }

    @Test
    void eachOtherFieldCounts() throws StudyFileException {
        Study study = ExampleWhatIf.example();
        String print = StudyFingerprint.of(study);
        Set<String> silent = new HashSet<>();
        List<Field> fields = Field.all(study);
        for (Field field : fields) {
            Object now = field.now();
            field.set(field.other());
            if (StudyFingerprint.of(study).equals(print)) {
                silent.add(field.name());
            }
            field.set(now);
        }
        assertEquals(print, StudyFingerprint.of(study));
        assertTrue(fields.size() > 300, fields.size() + " fields");
        Set<String> meant = new HashSet<>();
        fields.stream().filter(Field::movesNoFigure).forEach(f -> meant.add(f.name()));
        assertEquals(meant, silent);
        assertTrue(fields.stream().filter(f -> f.feature() instanceof EReference).count() > 20, "references");
        assertTrue(fields.stream().anyMatch(f -> f.feature().isMany()), "lists");
        assertTrue(
                meant.containsAll(Set.of("MeterBill.energyKwh", "MeterBillLine.amount", "MeterDay.date", "Programme.status", "Programme.letter",
                        "Programme.restrictions", "Plan.ownStatus", "Plan.ownLetter")),
                meant.toString());
    }

    @Test
    void whatDoesNotCountReachesNoInputOfTheResults() throws StudyFileException {
        Study study = ExampleWhatIf.example();
        StudyResult base = new StudyEvaluator().evaluate(StudyCompiler.compile(study));
        for (Field field : Field.all(study).stream().filter(f -> StudyFingerprint.NO_FIGURE.contains(f.feature())).toList()) {
            Object now = field.now();
            field.set(field.other());
            assertNotEquals(now, field.now());
            assertEquals(base.input(), StudyCompiler.compile(study), field.name());
            field.set(now);
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
