package org.amberyard.model.validation;

import org.amberyard.model.study.Study;

/** Something that a study must, or should, keep to. Rules cope with incomplete studies; what is missing is told once. */
@FunctionalInterface
interface Rule {
    void check(Study study, Findings findings);
}
