package org.amberyard.model.validation;

import java.util.List;
import org.amberyard.model.meta.FieldInfo;
import org.amberyard.model.meta.FieldWords;
import org.amberyard.model.meta.InputPlace;
import org.amberyard.model.meta.ModelWords;
import org.amberyard.model.meta.Phrase;
import org.amberyard.model.meta.PlaceWords;
import org.amberyard.model.study.Study;
import org.amberyard.model.whatif.Effect;
import org.amberyard.model.whatif.InputCorrelation;
import org.amberyard.model.whatif.Scenario;
import org.amberyard.model.whatif.ScenarioChange;
import org.amberyard.model.whatif.UncertainInput;
import org.amberyard.model.whatif.WhatIf;
import org.amberyard.model.whatif.WhatifPackage.Literals;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Uncertain inputs and scenarios point at fields of the study that can be varied, and pairs name two different inputs. */
final class WhatIfRule implements Rule {

    @Override
    public void check(Study study, Findings findings) {
        WhatIf whatIf = study.getWhatIf();
        if (whatIf == null) {
            return;
        }
        for (UncertainInput input : whatIf.getInputs()) {
            List<InputPlace> places = places(study, input, input.getKind(), input.getElement(), input.getField(),
                    Literals.UNCERTAIN_INPUT__FIELD, findings);
            if (!places.isEmpty()) {
                new InputShapes(study, findings).check(input, places);
            }
        }
        whatIf.getCorrelations().forEach(c -> check(c, findings));
        for (Scenario scenario : whatIf.getScenarios()) {
            scenario.getChanges().forEach(c -> check(study, c, findings));
        }
    }

    private static void check(InputCorrelation pair, Findings findings) {
        if (pair.getFirst() != null && pair.getFirst() == pair.getSecond()) {
            findings.error(pair, Literals.INPUT_CORRELATION__SECOND, "it pairs an input with itself; choose another one.");
        }
    }

    private static void check(Study study, ScenarioChange change, Findings findings) {
        List<InputPlace> places = places(study, change, change.getKind(), change.getElement(), change.getField(),
                Literals.SCENARIO_CHANGE__FIELD, findings);
        if (places.isEmpty()) {
            return;
        }
        if (FieldWords.isChoice(places.get(0).field())) {
            checkChoice(study, change, places.get(0), change.getChoice(), Literals.SCENARIO_CHANGE__CHOICE, findings);
        } else {
            checkWithin(change, change.getEffect(), places, change.getNumber(), Literals.SCENARIO_CHANGE__NUMBER, Literals.SCENARIO_CHANGE__NUMBER,
                    findings);
        }
    }

    /** The places that an input points at; none where it points at nothing that can be varied, which has been said. */
    private static List<InputPlace> places(Study study, EObject owner, String kind, String element, String field,
            EStructuralFeature where, Findings findings) {
        if (kind == null || kind.isBlank() || field == null || field.isBlank()) {
            return List.of();
        }
        List<InputPlace> places = InputPlace.all(study, kind, element, field);
        if (places.isEmpty()) {
            findings.error(owner, where, "the study has no “" + labels(kind, field) + "” of a " + label(kind)
                    + (element == null || element.isBlank() ? "" : " named “" + element + "”") + "; choose each from its list.");
            return List.of();
        }
        boolean held = places.stream().allMatch(place -> holds(place, places.size() > 1, owner, where, findings));
        return held ? places : List.of();
    }

    private static String label(String kind) {
        return Phrase.inside(PlaceWords.kindLabel(kind, ModelWords.ENGLISH));
    }

    private static String labels(String kind, String fields) {
        return PlaceWords.fieldsInName(kind, fields, ModelWords.ENGLISH);
    }

    /** A place holds a number that can be varied or, where it is alone, a choice. */
    private static boolean holds(InputPlace place, boolean several, EObject owner, EStructuralFeature where, Findings findings) {
        String kind = place.element().eClass().getName();
        String field = "“" + labels(kind, place.field().getName()) + "” of a " + label(kind);
        boolean number = FieldWords.isNumber(place.field());
        if (!number && (several || !FieldWords.isChoice(place.field()))) {
            findings.error(owner, where, field + (several ? " holds no number, so it cannot vary with others; "
                    : " holds neither a number nor a choice; ") + "choose another one.");
            return false;
        }
        if (number && place.value() == null) {
            findings.error(owner, where, field + " is empty; enter its value first.");
            return false;
        }
        return true;
    }

    /**
     * What each field would hold at a number is within its limits; the first that is not is told.
     *
     * @param holder field of the owner that holds such numbers
     * @param where field of the owner at which it is told
     */
    static void checkWithin(EObject owner, Effect effect, List<InputPlace> places, double number, EStructuralFeature holder,
            EStructuralFeature where, Findings findings) {
        for (InputPlace place : places) {
            double then = InputPlace.after(effect, ((Number) place.value()).doubleValue(), number);
            if (!FieldInfo.of(place.field()).allows(then)) {
                findings.error(owner, where, "at " + findings.value(owner, holder, number) + " " + Findings.label(place.field()) + " would be "
                        + findings.value(place.element(), place.field(), FieldWords.number(place.field(), then))
                        + ", which the field does not allow.");
                return;
            }
        }
    }

    /** A word is one that the field can hold. */
    static void checkChoice(Study study, EObject owner, InputPlace place, String word, EStructuralFeature where,
            Findings findings) {
        String given = word == null ? "" : word.strip();
        if (FieldWords.value(study, place.field(), given).isEmpty()) {
            findings.error(owner, where, "“" + given + "” is nothing that the field can hold; it can hold "
                    + String.join(", ", FieldWords.all(study, place.field())) + ".");
        }
    }
}
