package org.amberyard.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.money.CostCategory;
import org.junit.jupiter.api.Test;

/** The electric plan of the tiny district, whose base year is 2026. */
class ActualFigureTest {
    private static final OptionalDouble UNKNOWN = OptionalDouble.empty();
    private final StudyInput study = TinyDistrict.study();
    private final StudyResult result = StudyEvaluation.of(study, DutyTable.of(study.duty()));
    private final PlanResult plan = result.plans().get(1);

    private static ActualYear fuel(int year, double fuelL) {
        return new ActualYear(year, burnt(fuelL));
    }

    private static YearFigures burnt(double fuelL) {
        return new YearFigures(UNKNOWN, UNKNOWN, OptionalDouble.of(fuelL), UNKNOWN, UNKNOWN);
    }

    private StudyInput with(ActualYear... actuals) {
        return new StudyInput(study.name(), study.currency(), study.baseYear(), study.years(), study.money(), study.duty(),
                study.types(), study.buses(), study.depot(), study.prices(), study.funding(), study.air(), study.rules(),
                study.plans(), study.baseline(), study.trips(), List.of(actuals));
    }

    @Test
    void whatIsForeseenIsThatOfTheYear() {
        for (int year = 0; year < study.years(); year++) {
            int at = year;
            double fuelL = plan.fleet().years().stream().filter(y -> y.year() == at).mapToDouble(y -> y.use().fuelL()).sum();
            assertEquals(fuelL, ActualFigure.FUEL.planned(plan, year).orElseThrow(), 1e-9);
            assertEquals(plan.yards().get(year).yardKwh(), ActualFigure.ELECTRICITY.planned(plan, year).orElseThrow(), 1e-9);
        }
        assertTrue(ActualFigure.FUEL.planned(plan, 0).orElseThrow() > ActualFigure.FUEL.planned(plan, 3).orElseThrow());
        assertTrue(ActualFigure.ELECTRICITY.planned(plan, 3).orElseThrow() > 0);
    }

    @Test
    void moneyIsThatOfTheYear() {
        double constant = plan.ledger().amount(2, CostCategory.UPKEEP);
        double inflated = constant * study.money().rates().inflationFactor(study.money().time(CostCategory.UPKEEP, 2));
        assertEquals(inflated, ActualFigure.UPKEEP.planned(plan, 2).orElseThrow(), 1e-9 * inflated);
        double electric = plan.ledger().amount(2, CostCategory.ELECTRIC_ENERGY) + plan.ledger().amount(2, CostCategory.ELECTRIC_DEMAND)
                + plan.ledger().amount(2, CostCategory.ELECTRIC_FIXED);
        assertEquals(electric * inflated / constant, ActualFigure.ELECTRICITY_COST.planned(plan, 2).orElseThrow(), 1e-9 * electric);
    }

    @Test
    void theDifferenceIsActualLessPlanned() {
        double foreseen = ActualFigure.FUEL.planned(plan, 0).orElseThrow();
        ActualYear more = fuel(0, 1.25 * foreseen);
        assertEquals(0.25 * foreseen, ActualFigure.FUEL.difference(plan, more).orElseThrow(), 1e-9 * foreseen);
        assertEquals(0.25, ActualFigure.FUEL.differenceShare(plan, more).orElseThrow(), 1e-12);
    }

    @Test
    void whatIsNotKnownIsEmpty() {
        assertEquals(UNKNOWN, ActualFigure.UPKEEP.difference(plan, fuel(0, 1)));
        assertEquals(UNKNOWN, ActualFigure.FUEL.planned(plan, -1));
        assertEquals(UNKNOWN, ActualFigure.FUEL.planned(plan, study.years()));
        assertEquals(UNKNOWN, ActualFigure.FUEL.differenceShare(plan, fuel(-1, 1)));
    }

    /** Of a year before the study what was kept counts; of a year of the study its own plans say what they foresee. */
    @Test
    void whatWasForeseenBeforeTheStudyIsKept() {
        ActualYear before = new ActualYear(-1, burnt(1100), "Old", burnt(1000));
        assertTrue(before.isKept());
        assertEquals(0.1, ActualFigure.FUEL.differenceShare(plan, before).orElseThrow(), 1e-12);
        assertEquals(UNKNOWN, ActualFigure.UPKEEP.foreseen(plan, before));
        ActualYear now = new ActualYear(0, burnt(1100), "Old", burnt(1000));
        assertEquals(ActualFigure.FUEL.planned(plan, 0), ActualFigure.FUEL.foreseen(plan, now));
    }

    @Test
    void actualsMoveNoFigureOfAPlan() {
        StudyInput later = with(fuel(0, 12_345));
        StudyResult after = StudyRecosting.of(later, result).orElseThrow();
        assertEquals(later.actuals(), after.input().actuals());
        assertEquals(plan.measures(), after.plans().get(1).measures());
        assertEquals(Set.of(StudyStage.PRICES), StudyStage.touched(later, study));
    }
}
