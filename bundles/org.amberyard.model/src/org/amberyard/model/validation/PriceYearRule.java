package org.amberyard.model.validation;

import org.amberyard.model.study.Settings;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyPackage.Literals;

/** Prices are in money of the base year or of an earlier one. */
final class PriceYearRule implements Rule {

    @Override
    public void check(Study study, Findings findings) {
        Settings settings = study.getSettings();
        if (settings != null && settings.getPriceYear() > settings.getBaseYear()) {
            findings.error(settings, Literals.SETTINGS__PRICE_YEAR, findings.fact(settings, Literals.SETTINGS__PRICE_YEAR)
                    + ", after the base year " + settings.getBaseYear() + "; prices must be in money of the base year or before.");
        }
    }
}
