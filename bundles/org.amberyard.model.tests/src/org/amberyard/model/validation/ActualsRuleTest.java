package org.amberyard.model.validation;

import org.amberyard.model.SmallStudy;
import org.amberyard.model.study.StudyFactory;
import org.amberyard.model.study.YearActuals;
import org.junit.jupiter.api.Test;

class ActualsRuleTest {
    private final SmallStudy small = new SmallStudy();

    private void add(int year) {
        YearActuals actuals = StudyFactory.eINSTANCE.createYearActuals();
        actuals.setYear(year);
        small.study.getActuals().add(actuals);
    }

    @Test
    void aYearThatIsOverIsToldOnce() {
        add(2026);
        add(2025);
        Said.of(small);
        add(2026);
        Said.of(small, "ERROR: Actuals of a year 2026: the year has actuals already; keep one row for each year.");
    }
}
