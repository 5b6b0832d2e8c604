package org.amberyard.core.upkeep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

class TaskScheduleTest {
    private static final double INF = Double.POSITIVE_INFINITY;
    private static final MaintenanceTask SERVICE = SampleTasks.task("Service", UpkeepCause.INSPECTION, Powertrain.ALL,
            new TaskTrigger(10_000, INF, INF, BrakeWear.NONE));
    /** School months: nothing is driven in July and August. */
    private static final List<Double> SCHOOL = List.of(0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.0, 0.0, 0.1, 0.1, 0.1, 0.1);

    private static TaskSchedule schedule(MaintenanceTask task, double ageYears, double km, WearYear year) {
        return new TaskSchedule(new TaskPlan(List.of(task), 400_000), ageYears, km, year);
    }

    @Test
    void tasksFallInTheMonthsInWhichTheDistanceIsDriven() {
        WearYear year = SampleTasks.year(30_000, SCHOOL);
        List<TaskEvent> events = schedule(SERVICE, 0, 0, year).next(year, 0);
        assertEquals(List.of(3, 8, 11), events.stream().map(TaskEvent::month).toList());
    }

    @Test
    void ageRaisesPartsAndLabour() {
        WearYear year = SampleTasks.year(10_000);
        TaskEvent event = schedule(SERVICE, 5, 50_000, year).next(year, 5).get(0);
        assertEquals(150, event.partsCost(), 1e-9);
        assertEquals(3, event.labourHours(), 1e-9);
        assertEquals(150 + 3 * 58, event.cost(58), 1e-9);
    }

    @Test
    void failuresAreExpectedNumbersOfEachMonth() {
        WearYear year = SampleTasks.year(20_000);
        List<TaskEvent> events = schedule(SampleTasks.failing(1, 40_000), 3, 60_000, year).next(year, 3);
        assertEquals(12, events.size());
        assertEquals(0.5, events.stream().mapToDouble(TaskEvent::times).sum(), 1e-9);
    }

    @Test
    void theLongRunMeanIsThatOfManyYears() {
        WearYear year = SampleTasks.year(17_000);
        TaskSchedule schedule = schedule(SERVICE, 0, 0, year);
        double sum = 0;
        for (int i = 0; i < 100; i++) {
            sum += schedule.next(year, 2).stream().mapToDouble(e -> e.cost(58)).sum();
        }
        assertEquals(TaskPlan.meanPerYear(List.of(SERVICE), year, 2, 58) * 100, sum, 1e-6);
    }

    @Test
    void aTaskAppliesByPowertrainAndBody() {
        TaskScope engineOfC = new TaskScope(Powertrain.ENGINE, "C");
        assertEquals(List.of(true, false, false), List.of(engineOfC.covers(Powertrain.DIESEL, "C"),
                engineOfC.covers(Powertrain.ELECTRIC, "C"), engineOfC.covers(Powertrain.DIESEL, "A")));
    }

    @Test
    void liningsAreUsedUpByFriction() {
        assertEquals(2, new BrakeWear(10_000).sets(20_000), 1e-12);
        assertEquals(0, BrakeWear.NONE.sets(20_000), 0);
    }

    @Test
    void tyresWearByMassAndWork() {
        TyreWear wear = new TyreWear(10_000);
        assertEquals(1000, wear.equivalentKm(1000, 10_000, 800), 1e-9, "the reference bus at usual work");
        assertEquals(1200, wear.equivalentKm(1000, 12_000, 0), 1e-9, "work not known");
        assertEquals(1500, wear.equivalentKm(1000, 10_000, 1600), 1e-9, "twice the work");
    }

    @Test
    void calibrationIsMeasuredOverModelled() {
        assertEquals(1.25, UpkeepCalibration.of(0.5, 0.4).factor(), 1e-12);
        assertEquals(1, UpkeepCalibration.of(0.5, 0).factor(), 0);
        assertThrows(IllegalArgumentException.class, () -> UpkeepCalibration.of(0, 0.4));
    }

    @Test
    void theShopNeedsTwoPeopleForHighVoltageOrNone() {
        WearYear year = SampleTasks.year(20_000);
        MaintenanceTask inspection = SampleTasks.highVoltageInspection();
        ShopCalendar calendar = new ShopCalendar(schedule(inspection, 0, 0, year).next(year, 0));
        assertEquals(6, calendar.labourHours().get(Skill.HIGH_VOLTAGE), 1e-9);
        assertEquals(3, calendar.labourHours(5).get(Skill.HIGH_VOLTAGE), 1e-9);
        assertEquals(2, calendar.highVoltagePeople(400));
        assertEquals(3, calendar.highVoltagePeople(2.5));
        assertEquals(0, new ShopCalendar(List.of()).highVoltagePeople(400));
    }
}
