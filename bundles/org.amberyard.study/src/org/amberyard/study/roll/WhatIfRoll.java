package org.amberyard.study.roll;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.meta.FieldWords;
import org.amberyard.model.meta.InputPlace;
import org.amberyard.model.study.Study;
import org.amberyard.model.whatif.InputCorrelation;
import org.amberyard.model.whatif.Scenario;
import org.amberyard.model.whatif.ScenarioChange;
import org.amberyard.model.whatif.UncertainInput;
import org.amberyard.model.whatif.WhatIf;
import org.amberyard.model.whatif.WhatifPackage.Literals;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Uncertain inputs and scenarios go on pointing at what they pointed at; where that has gone, they go too. */
final class WhatIfRoll {
    private static final String EVERY = "*";
    private static final String GONE = "what it points at has gone";

    private final Study study;
    private final RollLog log;
    private final Map<EObject, EObject> elements = new HashMap<>();
    private final Map<EObject, EObject> choices = new HashMap<>();

    /** Notes what is pointed at, before anything of the study is changed. */
    WhatIfRoll(Study study, RollLog log) {
        this.study = study;
        this.log = log;
        inputs().forEach(i -> note(Pointer.of(i)));
        changes().forEach(c -> {
            note(Pointer.of(c));
            chosen(c).ifPresent(element -> choices.put(c, element));
        });
    }

    /**
     * Where an entry points.
     *
     * @param owner the entry
     * @param field its field that holds the name of the element
     * @param kind kind of the element
     * @param name its name
     * @param fields its fields
     */
    private record Pointer(EObject owner, EStructuralFeature field, String kind, String name, String fields) {
        static Pointer of(UncertainInput input) {
            return new Pointer(input, Literals.UNCERTAIN_INPUT__ELEMENT, input.getKind(), input.getElement(), input.getField());
        }

        static Pointer of(ScenarioChange change) {
            return new Pointer(change, Literals.SCENARIO_CHANGE__ELEMENT, change.getKind(), change.getElement(), change.getField());
        }

        boolean points() {
            return kind != null && !kind.isBlank() && fields != null && !fields.isBlank();
        }

        boolean named() {
            return name != null && !name.isBlank() && !EVERY.equals(name);
        }

        Optional<EObject> element(Study study, String called) {
            return InputPlace.of(study, kind, called, fields.split(";")[0].strip()).map(InputPlace::element);
        }
    }

    private List<UncertainInput> inputs() {
        return Optional.ofNullable(study.getWhatIf()).map(w -> List.copyOf(w.getInputs())).orElse(List.of());
    }

    private List<ScenarioChange> changes() {
        return Optional.ofNullable(study.getWhatIf()).map(WhatIf::getScenarios).stream().flatMap(List<Scenario>::stream)
                .flatMap(s -> s.getChanges().stream()).toList();
    }

    private void note(Pointer pointer) {
        if (pointer.points() && pointer.named()) {
            pointer.element(study, pointer.name()).ifPresent(element -> elements.put(pointer.owner(), element));
        }
    }

    private Optional<EObject> chosen(ScenarioChange change) {
        return reference(change).flatMap(field -> FieldWords.value(study, field, change.getChoice().strip())).map(EObject.class::cast);
    }

    private Optional<EReference> reference(ScenarioChange change) {
        if (!Pointer.of(change).points() || change.getChoice() == null) {
            return Optional.empty();
        }
        return InputPlace.all(study, change.getKind(), change.getElement(), change.getField()).stream().map(InputPlace::field)
                .filter(EReference.class::isInstance).map(EReference.class::cast).findFirst();
    }

    /** Renames and takes out entries, after the study has been changed. */
    void write() {
        inputs().stream().filter(i -> !follows(Pointer.of(i))).forEach(this::remove);
        changes().stream().filter(c -> !follows(Pointer.of(c)) || !followsChoice(c)).forEach(c -> {
            log.goes(c, GONE);
            EcoreUtil.remove(c);
        });
    }

    private void remove(UncertainInput input) {
        List<InputCorrelation> pairs = new ArrayList<>(study.getWhatIf().getCorrelations());
        pairs.stream().filter(p -> p.getFirst() == input || p.getSecond() == input).forEach(p -> {
            log.goes(p, GONE);
            study.getWhatIf().getCorrelations().remove(p);
        });
        Stream.of(Literals.WHAT_IF__GRID_ACROSS, Literals.WHAT_IF__GRID_UPWARD).filter(f -> study.getWhatIf().eGet(f) == input)
                .forEach(f -> log.set(study.getWhatIf(), f, null, GONE));
        log.goes(input, GONE);
        EcoreUtil.remove(input);
    }

    /** True where an entry still points at what it did; its element is named anew where that has another name. */
    private boolean follows(Pointer pointer) {
        EObject element = elements.get(pointer.owner());
        if (element != null) {
            Optional<String> name = name(pointer, element);
            name.ifPresent(n -> log.set(pointer.owner(), pointer.field(), n,
                    element instanceof Bus ? "the bus in its place" : "its name has changed"));
            return name.isPresent() && holds(pointer, name.get());
        }
        return !pointer.points() || holds(pointer, pointer.name());
    }

    /** Name by which an element is found, in the form that it had where that will do; empty where the study has it no more. */
    private Optional<String> name(Pointer pointer, EObject element) {
        if (!EcoreUtil.isAncestor(study, element)) {
            return Optional.empty();
        }
        String alone = ElementNames.of(element);
        String owned = ElementNames.of(element.eContainer()) + " / " + alone;
        return Stream.of(pointer.name(), alone, owned).filter(n -> pointer.element(study, n).filter(e -> e == element).isPresent()).findFirst();
    }

    private boolean holds(Pointer pointer, String name) {
        List<InputPlace> places = InputPlace.all(study, pointer.kind(), name, pointer.fields());
        return !places.isEmpty() && places.stream().noneMatch(p -> FieldWords.isNumber(p.field()) && p.value() == null);
    }

    private boolean followsChoice(ScenarioChange change) {
        EObject element = choices.get(change);
        if (element == null) {
            return true;
        }
        if (!EcoreUtil.isAncestor(study, element)) {
            return false;
        }
        log.set(change, Literals.SCENARIO_CHANGE__CHOICE, ElementNames.of(element), "its name has changed");
        return true;
    }
}
