package org.amberyard.study.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.amberyard.core.plan.PlanOutcome;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyRecosting;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.plan.StudyStage;
import org.amberyard.core.yard.YardMemory;
import org.amberyard.model.depot.ChargingPolicy;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.meta.FieldWords;
import org.amberyard.model.study.Study;
import org.amberyard.model.validation.Severity;
import org.amberyard.study.StudyCompiler;
import org.amberyard.study.StudyEvaluator;
import org.amberyard.study.StudyFindings;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;

/** Whatever field changes that leaves the driving as it is, what is kept from before gives what a whole evaluation gives; a part of the example. */
class EveryFieldTest {
    private static final double TOLERANCE = 1e-9;
    private static final Set<String> KEPT = Set.of("B01", "B02", "B08", "B15");

    private Study study;
    private StudyResult base;
    private YardMemory yards;
    private final List<String> differ = new ArrayList<>();
    private int compared;
    private int recosted;

    /** Four buses of the example with all that its yard has. */
    private static Study study() throws StudyFileException {
        Study example = ExampleWhatIf.example();
        example.setWhatIf(null);
        List<Bus> others = example.getBuses().stream().filter(b -> !KEPT.contains(b.getName())).toList();
        example.getPlans().forEach(plan -> plan.getReplacements().removeIf(step -> others.contains(step.getBus())));
        EcoreUtil.deleteAll(others, true);
        EcoreUtil.deleteAll(example.getRoutes().stream().filter(r -> example.getBuses().stream().noneMatch(b -> b.getRoute() == r)).toList(), true);
        example.getDepot().setChargingPolicy(ChargingPolicy.AT_ONCE);
        return example;
    }

    @Test
    void noFieldLeavesAnythingStale() throws StudyFileException {
        study = study();
        base = new StudyEvaluator().evaluate(StudyCompiler.compile(study));
        yards = YardMemory.knowing(base.plans().stream().flatMap(p -> p.yards().stream()).toList());
        Set<String> seen = new HashSet<>();
        List<EObject> elements = new ArrayList<>();
        study.eAllContents().forEachRemaining(elements::add);
        for (EObject element : elements) {
            element.eClass().getEAllAttributes().stream().filter(f -> seen.add(element.eClass().getName() + "." + f.getName()))
                    .forEach(field -> values(element, field).forEach(value -> tryValue(element, field, value)));
        }
        assertEquals(List.of(), differ);
        assertTrue(compared > 100 && recosted > 20, compared + " compared, " + recosted + " of them recosted");
    }

    private Stream<Object> values(EObject element, EStructuralFeature field) {
        Object now = element.eGet(field);
        if (FieldWords.isNumber(field) && now instanceof Number number) {
            double figure = number.doubleValue();
            if (number instanceof Integer whole) {
                return Stream.of(whole + 1);
            }
            return Stream.of(FieldWords.number(field, figure == 0 ? 0.01 : 1.3 * figure));
        }
        return FieldWords.isChoice(field) ? FieldWords.all(study, field).stream().flatMap(w -> FieldWords.value(study, field, w).stream())
                .filter(v -> !v.equals(now)).limit(2) : Stream.empty();
    }

    private void tryValue(EObject element, EStructuralFeature field, Object value) {
        Object now = element.eGet(field);
        element.eSet(field, value);
        if (StudyFindings.of(study).stream().noneMatch(f -> f.severity() == Severity.ERROR)) {
            compare(StudyCompiler.compile(study), element.eClass().getName() + "." + field.getName() + " " + now + " to " + value);
        }
        element.eSet(field, now);
    }

    private void compare(StudyInput variant, String what) {
        if (variant.equals(base.input()) || StudyStage.touched(variant, base.input()).contains(StudyStage.DRIVING)) {
            return;
        }
        List<PlanOutcome> whole = new StudyEvaluator().evaluate(variant).plans().stream().map(PlanOutcome::of).toList();
        List<PlanOutcome> kept = PlanOutcome.all(variant, base, yards);
        compared++;
        recosted += StudyRecosting.of(variant, base).isPresent() ? 1 : 0;
        for (int plan = 0; plan < whole.size(); plan++) {
            if (!alike(whole.get(plan), kept.get(plan))) {
                differ.add(what + ": " + whole.get(plan) + " but kept " + kept.get(plan));
            }
        }
    }

    private static boolean alike(PlanOutcome whole, PlanOutcome kept) {
        boolean alike = near(whole.presentCost(), kept.presentCost()) && near(whole.co2eKg(), kept.co2eKg());
        for (int year = 0; alike && year < whole.appropriations().size(); year++) {
            alike = near(whole.appropriations().get(year), kept.appropriations().get(year));
        }
        return alike;
    }

    private static boolean near(double whole, double kept) {
        return Math.abs(whole - kept) <= TOLERANCE * Math.max(1, Math.abs(whole));
    }
}
