package org.amberyard.model.validation;

import java.util.HashSet;
import java.util.Set;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyPackage.Literals;
import org.amberyard.model.study.YearActuals;

/** A year that is over is told once. */
final class ActualsRule implements Rule {

    @Override
    public void check(Study study, Findings findings) {
        Set<Integer> told = new HashSet<>();
        for (YearActuals actuals : study.getActuals()) {
            if (!told.add(actuals.getYear())) {
                findings.error(actuals, Literals.YEAR_ACTUALS__YEAR, "the year has actuals already; keep one row for each year.");
            }
        }
    }
}
