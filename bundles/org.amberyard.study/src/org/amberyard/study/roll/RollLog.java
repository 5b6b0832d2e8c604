package org.amberyard.study.roll;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.amberyard.model.common.Quality;
import org.amberyard.model.common.Sourced;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.meta.FieldInfo;
import org.amberyard.model.meta.Phrase;
import org.amberyard.model.meta.SourceNotes;
import org.amberyard.model.study.Study;
import org.amberyard.study.RoundedText;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Changes a study and keeps in words what was changed. */
final class RollLog {
    private final Study study;
    private final String from;
    private final List<RollChange> changes = new ArrayList<>();
    private final List<String> remarks = new ArrayList<>();

    /** @param from what the study was rolled from, for notes on sources */
    RollLog(Study study, String from) {
        this.study = study;
        this.from = from;
    }

    /** Sets a field where the value is another one. A source that was noted of it is not that of the new value. */
    void set(EObject element, EStructuralFeature field, Object value, String why) {
        Object before = element.eGet(field);
        if (Objects.equals(before, value)) {
            return;
        }
        RoundedText figures = new RoundedText(study);
        changes.add(new RollChange(kind(element), named(element), FieldInfo.of(field).label(), figures.shown(field, before),
                figures.shown(field, value), why));
        element.eSet(field, value);
        if (element instanceof Sourced sourced) {
            SourceNotes.find(sourced, field.getName()).ifPresent(note -> SourceNotes.put(sourced, field.getName(), Quality.ASSUMED,
                    from + (note.getCitation() == null ? "" : "; before: " + note.getCitation())));
        }
    }

    /** Tells of an element that is new. */
    void added(EObject element, String why) {
        changes.add(new RollChange(kind(element), named(element), "", "", "yes", why));
    }

    /** Tells of an element before it is taken out. */
    void goes(EObject element, String why) {
        changes.add(new RollChange(kind(element), named(element), "", "yes", "", why));
    }

    /** Tells something that no field shows. */
    void remark(String sentence) {
        remarks.add(sentence);
    }

    List<RollChange> changes() {
        return List.copyOf(changes);
    }

    List<String> remarks() {
        return List.copyOf(remarks);
    }

    private static String kind(EObject element) {
        return FieldInfo.classLabel(element.eClass());
    }

    private static String named(EObject element) {
        return Phrase.start(ElementNames.withKind(element));
    }
}
