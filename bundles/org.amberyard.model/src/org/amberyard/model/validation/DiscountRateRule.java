package org.amberyard.model.validation;

import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyPackage;
import org.eclipse.emf.ecore.EAttribute;

/** A discount rate that was typed as a share where per cent are asked stands out by its size. */
final class DiscountRateRule implements Rule {
    private static final EAttribute RATE = StudyPackage.Literals.SETTINGS__DISCOUNT_RATE;
    private static final double LEAST_USUAL = 0.005;
    private static final double PERCENT = 100;

    @Override
    public void check(Study study, Findings findings) {
        if (study.getSettings() == null) {
            return;
        }
        double rate = study.getSettings().getDiscountRate();
        if (rate > 0 && rate < LEAST_USUAL) {
            findings.warning(study.getSettings(), RATE, findings.fact(study.getSettings(), RATE) + ", which is next to nothing; was "
                    + findings.value(study.getSettings(), RATE, PERCENT * rate) + " meant?");
        }
    }
}
