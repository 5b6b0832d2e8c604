package org.amberyard.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.amberyard.model.common.CommonPackage;
import org.amberyard.model.common.Quality;
import org.amberyard.model.common.SourceNote;
import org.amberyard.model.common.Sourced;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.meta.FieldInfo;
import org.amberyard.model.meta.SourceNotes;
import org.amberyard.model.study.Study;
import org.amberyard.study.FieldFormat;
import org.amberyard.study.RoundedText;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/** What an import changes in a study: values of fields, to be put all at once, and in words. Putting nothing new tells nothing. */
public final class StudyUpdate {
    private final Study study;
    private final RoundedText figures;
    private final List<Put> puts = new ArrayList<>();
    private final List<String> changes = new ArrayList<>();

    /** An update of a study that changes nothing yet. */
    public StudyUpdate(Study study) {
        this.study = study;
        this.figures = new RoundedText(study);
    }

    /**
     * A field that gets a value.
     *
     * @param element element of the study
     * @param feature field of the element
     * @param value new value; the new elements in order for a field that holds several
     */
    public record Put(EObject element, EStructuralFeature feature, Object value) {
    }

    /** Gives a field another value, unless it has it; true when it has not. */
    public boolean put(EObject element, EStructuralFeature feature, Object value) {
        Object old = element.eGet(feature);
        if (Objects.equals(old, value)) {
            return false;
        }
        puts.add(new Put(element, feature, value));
        changes.add(ElementNames.withKind(element) + ", " + FieldInfo.of(feature).label().toLowerCase(Locale.ROOT) + ": "
                + said(feature, old) + " → " + said(feature, value));
        return true;
    }

    private String said(EStructuralFeature feature, Object value) {
        String text = value instanceof Double number ? figures.of(feature, number)
                : FieldFormat.of(feature, study).textWithUnit(value);
        return text.isEmpty() ? "nothing" : text;
    }

    /** Gives a field that holds elements others, and says so in words of the caller. */
    public void putElements(EObject element, EStructuralFeature feature, List<? extends EObject> value, List<String> words) {
        puts.add(new Put(element, feature, List.copyOf(value)));
        changes.addAll(words);
    }

    /**
     * Notes where fields of an element come from, in place of earlier notes of these fields.
     *
     * @param fields names of the fields, or {@link SourceNotes#EVERY_FIELD}
     */
    public void source(Sourced element, List<String> fields, Quality quality, String citation, String date) {
        List<SourceNote> notes = new ArrayList<>();
        if (!fields.contains(SourceNotes.EVERY_FIELD)) {
            element.getSources().stream().filter(n -> !fields.contains(n.getField())).forEach(notes::add);
        }
        fields.forEach(field -> notes.add(SourceNotes.of(field, quality, citation, date)));
        puts.add(new Put(element, CommonPackage.Literals.SOURCED__SOURCES, List.copyOf(notes)));
    }

    /** The values to put, in order. */
    public List<Put> puts() {
        return List.copyOf(puts);
    }

    /** What changes, field by field, in words. */
    public List<String> changes() {
        return List.copyOf(changes);
    }

    /** Puts the values into the study. */
    public void apply() {
        puts.forEach(p -> p.element().eSet(p.feature(), p.value()));
    }
}
