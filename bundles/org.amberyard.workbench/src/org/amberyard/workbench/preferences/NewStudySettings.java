package org.amberyard.workbench.preferences;

import org.amberyard.model.common.Month;
import org.amberyard.model.study.Settings;
import org.amberyard.model.study.UnitChoice;

/** What the user wants new studies to begin with; from then on it is the study's own. */
public final class NewStudySettings {

    private NewStudySettings() {
    }

    /** Units that a question about a new study begins with. */
    public static UnitChoice units() {
        return UnitChoice.valueOf(Preferences.UNITS.get());
    }

    /** Writes currency and fiscal year into the settings of a study that no one has edited yet. */
    public static void apply(Settings settings) {
        settings.setCurrency(Preferences.CURRENCY.get());
        settings.setFiscalYearStart(Month.VALUES.get(Preferences.FISCAL_YEAR_START.number() - 1));
    }
}
