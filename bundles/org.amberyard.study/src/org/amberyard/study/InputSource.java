package org.amberyard.study;

import java.util.Objects;
import java.util.Optional;
import org.amberyard.core.why.InputRef;
import org.amberyard.model.common.SourceNote;
import org.amberyard.model.common.Sourced;
import org.amberyard.model.meta.FieldInfo;
import org.amberyard.model.meta.InputPlace;
import org.amberyard.model.meta.SourceNotes;
import org.amberyard.model.study.Study;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * Where an input came from.
 *
 * @param quality measured, quoted, published, assumed, placeholder, default, or that no source is given
 * @param citation what was noted, else the source of the default; null where nothing is known
 * @param date date of the source; null where none was noted
 */
public record InputSource(String quality, String citation, String date) {
    /** Noted of a field that was cleared, where the note on its element would claim the default to be told by it. */
    public static final String CLEARED = "default of the program; the field was cleared";
    private static final String NO_SOURCE = "no source given";
    private static final String DEFAULT = "default";
    /** Begins the source of a default that only stands in until a real value is found. */
    private static final String PLACEHOLDER = "placeholder";
    /** Begins the source of a default that only stands in until the user's own value is entered. */
    private static final String NONE_OF_ITS_OWN = "none";

    /**
     * The source that the user noted, of an element without notes that of its owner; else the model's own default, else that
     * nothing is known of it.
     */
    public static InputSource of(EObject element, EStructuralFeature field) {
        return note(element, field.getName()).or(() -> note(element, SourceNotes.EVERY_FIELD))
                .or(() -> element instanceof Sourced ? Optional.empty() : note(element.eContainer(), SourceNotes.EVERY_FIELD))
                .map(n -> new InputSource(n.getQuality().getLiteral(), n.getCitation(), n.getDate()))
                .orElseGet(() -> withoutNote(element, field));
    }

    private static InputSource withoutNote(EObject element, EStructuralFeature field) {
        String source = FieldInfo.of(field).defaultSource();
        boolean isDefault = field instanceof EAttribute && Objects.equals(element.eGet(field), field.getDefaultValue())
                && !source.startsWith(NONE_OF_ITS_OWN);
        if (!isDefault) {
            return new InputSource(NO_SOURCE, null, null);
        }
        return new InputSource(source.startsWith(PLACEHOLDER) ? PLACEHOLDER : DEFAULT, source, null);
    }

    /**
     * True for a number that is the model's own default, of which nobody has told where it is from, and which is not missing either. Whether
     * somebody has entered just this figure is not known.
     */
    public static boolean isDefault(EObject element, EStructuralFeature field) {
        Object value = element.eGet(field);
        return value instanceof Number && Objects.equals(value, field.getDefaultValue()) && !isZeroForMissing(field, value)
                && (of(element, field).quality().equals(NO_SOURCE) || ofDefault(element, field));
    }

    private static boolean isZeroForMissing(EStructuralFeature field, Object value) {
        return FieldInfo.zeroIsMissing(field) && ((Number) value).doubleValue() == 0;
    }

    private static boolean ofDefault(EObject element, EStructuralFeature field) {
        InputSource source = of(element, field);
        return source.quality().equals(DEFAULT) || source.quality().equals(PLACEHOLDER) || CLEARED.equals(source.citation());
    }

    /** Source of an input that a derivation names; empty where the study has no such element or field. */
    public static Optional<InputSource> of(Study study, InputRef input) {
        return InputPlace.of(study, input.kind(), input.element(), input.field()).map(place -> of(place.element(), place.field()));
    }

    /** In one line. */
    public String words() {
        return quality + (citation == null || citation.isBlank() ? "" : ": " + citation)
                + (date == null || date.isBlank() ? "" : ", " + date);
    }

    private static Optional<SourceNote> note(EObject element, String field) {
        return element instanceof Sourced sourced ? SourceNotes.find(sourced, field) : Optional.empty();
    }
}
