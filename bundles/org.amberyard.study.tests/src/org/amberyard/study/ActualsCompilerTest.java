package org.amberyard.study;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalDouble;
import org.amberyard.core.plan.ActualYear;
import org.amberyard.core.plan.YearFigures;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyFactory;
import org.amberyard.model.study.YearActuals;
import org.junit.jupiter.api.Test;

/** The example, whose base year is 2026. */
class ActualsCompilerTest {
    private static final OptionalDouble UNKNOWN = OptionalDouble.empty();

    private static YearActuals actuals(int year, Double fuelL) {
        YearActuals actuals = StudyFactory.eINSTANCE.createYearActuals();
        actuals.setYear(year);
        actuals.setFuelL(fuelL);
        return actuals;
    }

    @Test
    void yearsCountFromTheBaseYearAndStandInTheirOrder() throws Exception {
        Study study = ExampleStudy.load();
        study.getActuals().add(actuals(2026, null));
        study.getActuals().add(actuals(2024, 0.0));
        study.getActuals().get(0).setUpkeepCost(91_000.0);
        study.getActuals().get(1).setForeseenBy("Old plan");
        study.getActuals().get(1).setForeseenElectricityCost(700.0);
        assertEquals(List.of(new ActualYear(-2, new YearFigures(UNKNOWN, UNKNOWN, OptionalDouble.of(0), UNKNOWN, UNKNOWN), "Old plan",
                new YearFigures(UNKNOWN, OptionalDouble.of(700), UNKNOWN, UNKNOWN, UNKNOWN)),
                new ActualYear(0, new YearFigures(UNKNOWN, UNKNOWN, UNKNOWN, UNKNOWN, OptionalDouble.of(91_000)))),
                StudyCompiler.compile(study).actuals());
    }
}
