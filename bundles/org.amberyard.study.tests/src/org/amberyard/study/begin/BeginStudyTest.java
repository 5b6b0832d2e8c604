package org.amberyard.study.begin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.Function;
import org.amberyard.core.plan.RouteAnswer;
import org.amberyard.core.plan.StudyEvaluation;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.model.common.BodyType;
import org.amberyard.model.common.Quality;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.meta.SourceNotes;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.plans.PortPurchase;
import org.amberyard.model.site.MonthClimate;
import org.amberyard.model.site.ServiceCalendar;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.UnitChoice;
import org.amberyard.model.validation.Finding;
import org.amberyard.model.validation.Severity;
import org.amberyard.model.vehicles.ElectricType;
import org.amberyard.model.vehicles.VehicleType;
import org.amberyard.study.StudyCompiler;
import org.amberyard.study.StudyFindings;
import org.junit.jupiter.api.Test;

/** Studies begun with answers; all answers invented. */
class BeginStudyTest {
    private static final Answers ANSWERS = answers(12, 2, 2010, 2024);

    private static Answers answers(int buses, int spares, int oldest, int newest) {
        return new Answers("Ashcombe", UnitChoice.METRIC, 2026,
                new Answers.Fleet(List.of(new Answers.Bodies(BodyType.C, buses, spares, 165_000, 360_000)), oldest, newest), new Answers.RouteDay(80, 4, 180),
                new Answers.Weather(-9, 28, -24), new Answers.Prices(0.95, 0.11, 9), 2035);
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
        StudyInput smaller = StudyCompiler.compile(BeginStudy.with(ANSWERS, b -> type.getBatteryKwh() - 40));
        assertTrue(RouteAnswer.of(StudyEvaluation.of(smaller, DutyTable.of(smaller.duty())), 1).stream().noneMatch(a -> a.passesAged(false)));
    }

    /** A small bus keeps no figure of a large one, and each bus is replaced by an electric one of its own body. */
    @Test
    void aMixedFleetHasTypesOfTheirOwnBodies() {
        Answers mixed = new Answers("Ashcombe", UnitChoice.METRIC, 2026, new Answers.Fleet(List.of(new Answers.Bodies(BodyType.A, 3, 1, 95_000, 250_000),
                new Answers.Bodies(BodyType.C, 4, 1, 165_000, 360_000), new Answers.Bodies(BodyType.D, 2, 0, 190_000, 410_000)), 2010, 2024),
                ANSWERS.day(), ANSWERS.weather(), ANSWERS.prices(), 2035);
        Study study = BeginStudy.of(mixed);
        assertEquals(List.of(), StudyFindings.of(study).stream().filter(f -> f.severity() == Severity.ERROR).map(Finding::message).toList());
        assertEquals(List.of("Diesel A", "Electric A", "Diesel C", "Electric C", "Diesel D", "Electric D"),
                study.getVehicleTypes().stream().map(VehicleType::getName).toList());
        assertEquals(11, study.getBuses().stream().map(Bus::getName).distinct().count());
        assertEquals(9, study.getRoutes().size());
        for (Function<VehicleType, Double> figure : List.<Function<VehicleType, Double>>of(VehicleType::getCurbMassKg, VehicleType::getFrontalAreaM2,
                VehicleType::getPurchasePrice, VehicleType::getCabinLossKwPerK)) {
            assertEquals(List.of(true, true), List.of(0, 2).stream()
                    .map(at -> figure.apply(study.getVehicleTypes().get(at)) < figure.apply(study.getVehicleTypes().get(at + 2))).toList());
        }
        assertTrue(((ElectricType) study.getVehicleTypes().get(1)).getBatteryKwh() < ((ElectricType) study.getVehicleTypes().get(5)).getBatteryKwh());
        assertTrue(study.getPlans().get(1).getReplacements().stream().allMatch(r -> r.getNewType() instanceof ElectricType
                && r.getNewType().getBodyType() == r.getBus().getType().getBodyType() && r.getBus().getRoute().getBodyType() == r.getNewType().getBodyType()));
        assertTrue(study.getVehicleTypes().stream().allMatch(t -> SourceNotes.find(t, SourceNotes.EVERY_FIELD).orElseThrow().getQuality() == Quality.ASSUMED));
    }

    /** A small bus burns less than a large one on the same route. */
    @Test
    void aSmallBusUsesLessThanALargeOne() {
        Study study = BeginStudy.of(new Answers("Ashcombe", UnitChoice.METRIC, 2026, new Answers.Fleet(List.of(
                new Answers.Bodies(BodyType.A, 1, 0, 95_000, 250_000), new Answers.Bodies(BodyType.D, 1, 0, 190_000, 410_000)), 2015, 2015),
                ANSWERS.day(), ANSWERS.weather(), ANSWERS.prices(), 2035));
        StudyInput input = StudyCompiler.compile(study);
        StudyResult result = StudyEvaluation.of(input, DutyTable.of(input.duty()));
        List<Double> fuel = result.baseline().fleet().years().stream().filter(y -> y.year() == 0).map(y -> y.use().fuelL()).toList();
        assertTrue(fuel.get(0) < 0.8 * fuel.get(1), fuel.toString());
    }

    @Test
    void oneBusIsAFleet() {
        Study study = BeginStudy.of(answers(1, 0, 2015, 2015));
        assertEquals(List.of(), StudyFindings.of(study).stream().filter(f -> f.severity() == Severity.ERROR).map(Finding::message).toList());
    }
}
