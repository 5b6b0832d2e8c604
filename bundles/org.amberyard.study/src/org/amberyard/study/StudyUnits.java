package org.amberyard.study;

import org.amberyard.core.units.UnitSystem;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.UnitChoice;

/** The units that a study asks to be shown in. */
public final class StudyUnits {
    private StudyUnits() {
    }

    /** Unit system of a study; US customary until it has settings. */
    public static UnitSystem of(Study study) {
        return study.getSettings() != null && study.getSettings().getUnits() == UnitChoice.METRIC ? UnitSystem.METRIC
                : UnitSystem.US;
    }

    /** Currency code of a study. */
    public static String currency(Study study) {
        return study.getSettings() == null ? "USD" : study.getSettings().getCurrency();
    }
}
