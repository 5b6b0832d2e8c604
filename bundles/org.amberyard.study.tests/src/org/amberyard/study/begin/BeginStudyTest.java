package org.amberyard.study.begin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.amberyard.core.plan.RouteAnswer;
import org.amberyard.core.plan.StudyEvaluation;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.model.common.BodyType;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.plans.PortPurchase;
import org.amberyard.model.site.MonthClimate;
import org.amberyard.model.site.ServiceCalendar;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.UnitChoice;
import org.amberyard.model.validation.Finding;
import org.amberyard.model.validation.Severity;
import org.amberyard.model.vehicles.ElectricType;
import org.amberyard.study.StudyCompiler;
import org.amberyard.study.StudyFindings;
import org.junit.jupiter.api.Test;

/** Studies begun with answers; all answers invented. */
class BeginStudyTest {
    private static final Answers ANSWERS = answers(12, 2, 2010, 2024);

    private static Answers answers(int buses, int spares, int oldest, int newest) {
        return new Answers("Ashcombe", UnitChoice.METRIC, 2026, new Answers.Fleet(buses, spares, BodyType.C, oldest, newest), new Answers.RouteDay(80, 4, 180),
                new Answers.Weather(-9, 28, -24), new Answers.Prices(0.95, 0.11, 9, 165_000, 360_000), 2035);
    }

    @Test
    void itCanBeEvaluatedAtOnceAndSaysThatAllIsAssumed() {
        Study study = BeginStudy.of(ANSWERS);
        assertEquals(List.of(), StudyFindings.of(study).stream().filter(f -> f.severity() == Severity.ERROR).map(Finding::message).toList());
        StudyInput input = StudyCompiler.compile(study);
        StudyResult result = StudyEvaluation.of(input, DutyTable.of(input.duty()));
        assertEquals(List.of("Like for like", "Electric by 2035"), result.plans().stream().map(p -> p.name()).toList());
        assertEquals(12 * 80 * 180, result.baseline().measures().kmByYear().get(0), 1e-6);
        assertTrue(result.plans().get(1).measures().meterKwh() > 0);
        assertTrue(study.getBuses().stream().allMatch(b -> b.getSources().size() == 1));
    }

    @Test
    void agesLieEvenlyAndSparesAreTheOldest() {
        Study study = BeginStudy.of(ANSWERS);
        assertEquals(2024, study.getBuses().get(0).getInServiceYear());
        assertEquals(2010, study.getBuses().get(13).getInServiceYear());
        assertTrue(study.getBuses().get(12).getRoute() == null);
        assertEquals(80 * 180 * 2, study.getBuses().get(0).getOdometerKm(), 1e-9);
    }

    @Test
    void theElectricPlanReplacesAllRouteBusesOldestFirstWithAPortEach() {
        Plan plan = BeginStudy.of(ANSWERS).getPlans().get(1);
        assertEquals(12, plan.getReplacements().size());
        assertEquals(12, plan.getPortPurchases().stream().mapToInt(PortPurchase::getCount).sum());
        assertEquals(2027, plan.getReplacements().get(0).getYear());
        assertEquals(2035, plan.getReplacements().get(11).getYear());
        List<Integer> ages = plan.getReplacements().stream().map(r -> r.getBus()).map(Bus::getInServiceYear).toList();
        assertEquals(ages.stream().sorted().toList(), ages);
    }

    @Test
    void theYearSwingsBetweenTheAnswers() {
        List<MonthClimate> months = BeginStudy.of(ANSWERS).getSite().getClimate();
        assertEquals(-9, months.get(0).getMeanLowC(), 1e-9);
        assertEquals(28, months.get(6).getMeanHighC(), 1e-9);
        assertEquals(-24, months.get(0).getColdestLowC(), 1e-9);
    }

    @Test
    void schoolDaysAddUp() {
        for (int days : new int[] {1, 10, 174, 180, 184, 250}) {
            ServiceCalendar calendar = SchoolYear.of(days);
            assertEquals(days, calendar.getJanuaryDays() + calendar.getFebruaryDays() + calendar.getMarchDays() + calendar.getAprilDays()
                    + calendar.getMayDays() + calendar.getJuneDays() + calendar.getJulyDays() + calendar.getAugustDays()
                    + calendar.getSeptemberDays() + calendar.getOctoberDays() + calendar.getNovemberDays() + calendar.getDecemberDays());
            assertEquals(0, calendar.getJulyDays());
        }
    }

    @Test
    void theElectricBusesDoTheirDayAgedOnTheColdestDayAndASmallerPackWouldNot() {
        StudyInput input = StudyCompiler.compile(BeginStudy.of(ANSWERS));
        StudyResult result = StudyEvaluation.of(input, DutyTable.of(input.duty()));
        assertTrue(RouteAnswer.of(result, 1).stream().allMatch(a -> a.electric() && a.passesAged(false)));
        ElectricType type = (ElectricType) BeginStudy.of(ANSWERS).getVehicleTypes().get(1);
        StudyInput smaller = StudyCompiler.compile(BeginStudy.with(ANSWERS, type.getBatteryKwh() - 30));
        assertTrue(RouteAnswer.of(StudyEvaluation.of(smaller, DutyTable.of(smaller.duty())), 1).stream().noneMatch(a -> a.passesAged(false)));
    }

    @Test
    void oneBusIsAFleet() {
        Study study = BeginStudy.of(answers(1, 0, 2015, 2015));
        assertEquals(List.of(), StudyFindings.of(study).stream().filter(f -> f.severity() == Severity.ERROR).map(Finding::message).toList());
    }
}
