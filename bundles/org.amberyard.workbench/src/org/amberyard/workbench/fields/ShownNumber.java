package org.amberyard.workbench.fields;

import org.amberyard.model.meta.FieldWords;
import org.amberyard.model.study.Study;
import org.amberyard.study.RoundedText;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Numbers at a length for reading. */
final class ShownNumber {
    private final EStructuralFeature feature;
    private final RoundedText figures;

    ShownNumber(EStructuralFeature feature, Study study) {
        this.feature = feature;
        this.figures = new RoundedText(study);
    }

    /** The stored value whose shown figure has a handful of digits; whole parts are never rounded away. */
    Object rounded(Number stored) {
        if (stored instanceof Integer) {
            return stored;
        }
        double value = stored.doubleValue();
        return stored.equals(feature.getDefaultValue()) ? figures.readableDefault(feature, value) : figures.readable(feature, value);
    }

    /** The stored value of a limit whose shown figure has a handful of digits and keeps the limit; those of whole numbers are whole. */
    Object limit(double limit, boolean most) {
        return FieldWords.isWhole(feature) ? (Object) (int) limit : (Object) figures.readableLimit(feature, limit, most);
    }
}
