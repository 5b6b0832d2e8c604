package org.amberyard.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.amberyard.core.why.Derivation;
import org.amberyard.core.why.InputRef;
import org.amberyard.model.common.SourceNote;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.meta.FieldInfo;
import org.amberyard.model.meta.InputPlace;
import org.amberyard.model.study.Study;
import org.amberyard.study.FieldFormat;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/** The inputs of an element that a figure rests on: those of its own, then the elements that belong to it. */
final class ElementInputs {
    private final Study study;
    private final EObject element;

    private ElementInputs(Study study, EObject element) {
        this.study = study;
        this.element = element;
    }

    /** What a reference to a whole element stands for; empty where the study has no such element. */
    static Optional<List<Derivation>> of(Study study, InputRef whole) {
        return InputPlace.element(study, whole.kind(), whole.element()).map(e -> new ElementInputs(study, e).all());
    }

    private List<Derivation> all() {
        List<Derivation> inputs = new ArrayList<>();
        element.eClass().getEAllStructuralFeatures().stream().filter(InputRegister::isInput).forEach(f -> inputs.add(input(f)));
        element.eContents().stream().filter(part -> !(part instanceof SourceNote)).forEach(part -> inputs.add(part(part)));
        return inputs;
    }

    private Derivation input(EStructuralFeature field) {
        FieldInfo info = FieldInfo.of(field);
        InputRef ref = new InputRef(element.eClass().getName(), name(element), field.getName());
        Object value = element.eGet(field);
        if (value instanceof Number number) {
            return Derivation.input(info.label(), number.doubleValue(), info.unitToken(), ref);
        }
        String text = InputRegister.brief(FieldFormat.of(field, study).shown(value));
        return Derivation.input(info.label() + ": " + (text.isEmpty() ? "none" : text), Double.NaN, "", ref);
    }

    private Derivation part(EObject part) {
        return Derivation.inputsOf(ElementNames.withKind(part), InputRef.allOf(part.eClass().getName(), name(part)));
    }

    /** As it is looked up: elements of a list that is not the study's own bear the name of their owner as well. */
    private static String name(EObject of) {
        boolean owned = of.eContainer() != null && of.eContainmentFeature().isMany() && !(of.eContainer() instanceof Study);
        return owned ? ElementNames.of(of.eContainer()) + " / " + ElementNames.of(of) : ElementNames.of(of);
    }
}
