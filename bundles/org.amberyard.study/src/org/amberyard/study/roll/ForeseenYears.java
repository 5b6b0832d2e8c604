package org.amberyard.study.roll;

import java.util.OptionalDouble;
import org.amberyard.core.plan.ActualFigure;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyFactory;
import org.amberyard.model.study.YearActuals;

/** Keeps what the plan that was carried out foresaw for the years that are over, so that what comes of them can still be held against it. */
final class ForeseenYears {
    private final Study study;
    private final PlanResult plan;

    /** @param plan the plan as it was before the years were over */
    ForeseenYears(Study study, PlanResult plan) {
        this.study = study;
        this.plan = plan;
    }

    /**
     * Writes the years, and a row for each whose actuals are still to be entered.
     *
     * @param oldBase first year that is over
     * @param newBase first year that is not
     */
    void write(RollLog log, int oldBase, int newBase) {
        for (int year = oldBase; year < newBase; year++) {
            write(actuals(year), year - oldBase);
        }
        log.remark("What plan “" + plan.name() + "” foresaw for " + (newBase - oldBase == 1 ? oldBase + " is" : oldBase + " to " + (newBase - 1)
                + " is") + " kept on the page Actuals; what came of it can be entered there beside.");
    }

    private YearActuals actuals(int year) {
        return study.getActuals().stream().filter(a -> a.getYear() == year).findFirst().orElseGet(() -> added(year));
    }

    private YearActuals added(int year) {
        YearActuals actuals = StudyFactory.eINSTANCE.createYearActuals();
        actuals.setYear(year);
        study.getActuals().add(actuals);
        return actuals;
    }

    private void write(YearActuals into, int year) {
        into.setForeseenBy(plan.name());
        into.setForeseenElectricityKwh(foreseen(ActualFigure.ELECTRICITY, year));
        into.setForeseenElectricityCost(foreseen(ActualFigure.ELECTRICITY_COST, year));
        into.setForeseenFuelL(foreseen(ActualFigure.FUEL, year));
        into.setForeseenFuelCost(foreseen(ActualFigure.FUEL_COST, year));
        into.setForeseenUpkeepCost(foreseen(ActualFigure.UPKEEP, year));
    }

    private Double foreseen(ActualFigure figure, int year) {
        OptionalDouble planned = figure.planned(plan, year);
        return planned.isPresent() ? planned.getAsDouble() : null;
    }
}
