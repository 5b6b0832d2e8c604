package org.amberyard.model.validation;

import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyPackage.Literals;

/** There is a plan to evaluate. */
final class PlansRule implements Rule {

    @Override
    public void check(Study study, Findings findings) {
        if (study.getPlans().isEmpty()) {
            findings.error(study, Literals.STUDY__PLANS, "it has no plan; add one and make it the baseline.");
        }
    }
}
