package org.amberyard.workbench.fields;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.amberyard.model.meta.FieldInfo;
import org.amberyard.model.study.Study;
import org.amberyard.study.FieldFormat;
import org.amberyard.study.FieldFormatException;
import org.amberyard.study.InputSource;
import org.amberyard.study.VariedNumber;
import org.amberyard.workbench.language.Words;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.osgi.util.NLS;

/** A field of the elements of a study, as it is shown and typed in the study's units. */
public final class Field {

    /** How the model says that a default only stands in for the user's own figure. */
    private static final String NO_SOURCE = "none: ";

    private final EStructuralFeature feature;
    private final FieldFormat format;
    private final ShownNumber shown;
    private final Study study;
    private final Optional<PlaceNames> places;

    /** A field in the units that the study has now. */
    public Field(EStructuralFeature feature, Study study) {
        this.feature = feature;
        this.study = study;
        this.format = FieldFormat.of(feature, study, Words.model());
        this.shown = new ShownNumber(feature, study);
        this.places = PlaceNames.of(feature);
    }

    EStructuralFeature feature() {
        return feature;
    }

    String label() {
        return Words.field(feature).label();
    }

    /** Label with unit. */
    public String header() {
        return format.header();
    }

    /** What the field means and where its default comes from. */
    public String tip() {
        FieldInfo info = Words.field(feature);
        Object value = feature.getDefaultValue();
        if (value == null && format.isNumber() && !feature.isRequired()) {
            return info.documentation() + "\n" + Messages.Field_delete_empties;
        }
        if (info.defaultSource().isEmpty() || value == null) {
            return info.documentation();
        }
        boolean placeholder = FieldInfo.of(feature).defaultSource().startsWith(NO_SOURCE);
        String origin = NLS.bind(placeholder ? Messages.Field_placeholder : Messages.Field_default,
                format.textWithUnit(readable(value)),
                placeholder ? info.defaultSource().substring(info.defaultSource().indexOf(':') + 2) : info.defaultSource());
        String onDelete = !format.isNumber() ? "" : "\n" + (format.isMissing(value) ? Messages.Field_delete_empties
                : Messages.Field_delete_default);
        return info.documentation() + "\n" + origin + onDelete;
    }

    /** True for what elements are called by. */
    boolean isName() {
        return feature.isRequired() && feature.getName().equals("name");
    }

    boolean isFigure() {
        return format.isNumber();
    }

    /** True when elements of the kind of an element have the field. */
    boolean belongsTo(EObject element) {
        return element.eClass().getEAllStructuralFeatures().contains(feature);
    }

    /** Text at a length for reading; a number that stands for another field's with its unit, which no header can name. */
    String text(EObject element) {
        return isVaried() ? VariedNumber.text(format, study, element, feature, element.eGet(feature))
                : places.map(p -> p.shown(element, (String) element.eGet(feature))).orElseGet(() -> text(element.eGet(feature)));
    }

    /** True for a number that stands for that of another field, whose unit is another from element to element. */
    boolean isVaried() {
        return VariedNumber.isOne(feature);
    }

    /** Text of a value at a length for reading. */
    public String text(Object value) {
        return format.isLeftToBaseYear(value) ? Words.model().asBaseYear() : format.shown(readable(value));
    }

    /** The value of a field that is cleared. */
    Object cleared() {
        return feature.isMany() ? List.of() : feature.getDefaultValue();
    }

    /** What clearing it does, for the name of the edit. */
    String clearedWords() {
        return keepsNumber() ? NLS.bind(Messages.Change_default, label(), format.textWithUnit(readable(cleared())))
                : NLS.bind(Messages.Change_emptied, label());
    }

    /** True for a number that has a default when it is cleared; all else is empty then. */
    boolean keepsNumber() {
        return format.isNumber() && !format.isMissing(cleared());
    }

    /** True for a number that is the default, by all that is known: it is shown as one that stands in. */
    boolean standsIn(EObject element) {
        return format.isNumber() && InputSource.isDefault(element, feature);
    }

    private Object readable(Object value) {
        return format.isNumber() && value instanceof Number number ? shown.rounded(number) : value;
    }

    /** Text that loses nothing, for editing and copying. */
    String fullText(EObject element) {
        return isVaried() ? VariedNumber.format(format, study, element, feature).text(element.eGet(feature))
                : places.map(p -> p.shown(element, (String) element.eGet(feature))).orElseGet(() -> fullText(element.eGet(feature)));
    }

    private String fullText(Object value) {
        return format.isLeftToBaseYear(value) ? Words.model().asBaseYear() : format.text(value);
    }

    /** Names of kinds or fields that it holds; empty for other fields. */
    Optional<PlaceNames> places() {
        return places;
    }

    /** What may be chosen for an element; null for one that is yet to come. */
    List<String> choices(EObject element) {
        return places.map(p -> p.choices(element, study)).orElseGet(this::choices);
    }

    /** What may be chosen; empty when the field takes any text. */
    List<String> choices() {
        if (feature.getEType() instanceof EEnum literals) {
            return literals.getELiterals().stream().map(Words.model()::choice).toList();
        }
        if (feature.getEType().getInstanceClass() == boolean.class) {
            return List.of(format.text(true), format.text(false));
        }
        if (feature instanceof EReference reference) {
            Stream<String> names = new Candidates(reference, study).names().stream();
            return (feature.isRequired() ? names : Stream.concat(Stream.of(""), names)).toList();
        }
        return List.of();
    }

    /**
     * The value of a typed text.
     *
     * @throws FieldRefusal when the text is no value of the field or lies outside its limits
     */
    public Object value(String typed) throws FieldRefusal {
        return value(format, typed);
    }

    /** The value of a text that was typed for an element. */
    Object value(EObject element, String typed) throws FieldRefusal {
        return value(VariedNumber.format(format, study, element, feature), typed);
    }

    private Object value(FieldFormat format, String typed) throws FieldRefusal {
        if (feature instanceof EReference reference) {
            Candidates candidates = new Candidates(reference, study);
            return reference.isMany() ? candidates.several(FieldFormat.names(typed)) : candidates.named(typed.strip());
        }
        try {
            Object value = format.parse(typed);
            if (feature.isRequired() && "".equals(value)) {
                throw new FieldRefusal(NLS.bind(Messages.Required_refused, label()));
            }
            FieldLimits.check(feature, format, shown, value, typed.strip());
            return value;
        } catch (FieldFormatException e) {
            throw new FieldRefusal(Words.say(e.getMessage()));
        }
    }
}
