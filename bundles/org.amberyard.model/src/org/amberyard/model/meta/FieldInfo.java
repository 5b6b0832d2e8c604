package org.amberyard.model.meta;

import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EModelElement;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * What the model says about one of its fields. Limits are in the stored unit.
 *
 * @param label name of the field for people, for example {@code Mean riders}
 * @param unitToken stored unit, for example {@code kWh/km}; empty for a field without unit
 * @param min smallest value allowed
 * @param max largest value allowed
 * @param above limit that the value must exceed
 * @param documentation what the field means
 * @param defaultSource where the default value comes from; empty when there is no default
 */
public record FieldInfo(String label, String unitToken, OptionalDouble min, OptionalDouble max, OptionalDouble above,
        String documentation, String defaultSource) {
    private static final String ANNOTATION = "urn:amberyard:field";

    /** True for a number within the limits; never for what is not a number. */
    public boolean allows(double value) {
        return value > above.orElse(Double.NEGATIVE_INFINITY) && value >= min.orElse(Double.NEGATIVE_INFINITY)
                && value <= max.orElse(Double.POSITIVE_INFINITY);
    }

    /** What the model says about a field; what it leaves out is empty, and the label falls back to the field's name. */
    public static FieldInfo of(EStructuralFeature feature) {
        return new FieldInfo(label(feature, feature.getName()), text(feature, "unit").orElse(""),
                number(feature, "min"), number(feature, "max"), number(feature, "above"), documentation(feature),
                text(feature, "default source").orElse(""));
    }

    /** True for a field in which zero says that there is no figure: nobody has measured or told one. It is shown as an empty field. */
    public static boolean zeroIsMissing(EStructuralFeature feature) {
        return text(feature, "zero").filter("missing"::equals).isPresent();
    }

    /** Name of a kind of element for people, for example {@code Port type}. */
    public static String classLabel(EClass type) {
        return label(type, type.getName());
    }

    /** What a package, class, field, enumeration or literal means; empty when the model does not say. */
    public static String documentation(EModelElement element) {
        return Optional.ofNullable(EcoreUtil.getDocumentation(element)).orElse("");
    }

    private static String label(EModelElement element, String fallback) {
        return text(element, "label").orElse(fallback);
    }

    private static OptionalDouble number(EModelElement element, String key) {
        return text(element, key).map(t -> OptionalDouble.of(Double.parseDouble(t))).orElse(OptionalDouble.empty());
    }

    static Optional<String> text(EModelElement element, String key) {
        return Optional.ofNullable(EcoreUtil.getAnnotation(element, ANNOTATION, key));
    }
}
