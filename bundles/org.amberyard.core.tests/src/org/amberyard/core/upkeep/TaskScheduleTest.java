package org.amberyard.core.upkeep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class TaskScheduleTest {
    private static final double INF = Double.POSITIVE_INFINITY;
    private static final MaintenanceTask SERVICE = SampleTasks.task("Service", UpkeepCause.INSPECTION, Powertrain.ALL,
            new TaskTrigger(10_000, INF, INF, BrakeWear.NONE));
    /** School months: nothing is driven in July and August. */
    private static final List<Double> SCHOOL = List.of(0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.0, 0.0, 0.1, 0.1, 0.1, 0.1);

    private static TaskSchedule schedule(MaintenanceTask task, double ageYears, double km, WearYear year) {
        return new TaskSchedule(new TaskPlan(List.of(task), f -> f.renewal(400_000)), ageYears, 0, km, year);
    }

    @Test
    void tasksFallInTheMonthsInWhichTheDistanceIsDriven() {
        WearYear year = SampleTasks.year(30_000, SCHOOL);
        List<TaskEvent> events = schedule(SERVICE, 0, 0, year).next(year, 0);
        assertEquals(List.of(3, 8, 11), events.stream().map(TaskEvent::month).toList());
    }

    @Test
    void yearlyTasksOfNewBusesSpreadOverTheYearAndComeOnceAYear() {
        MaintenanceTask yearly = SampleTasks.task("Yearly", UpkeepCause.HEATING, Powertrain.ALL,
                new TaskTrigger(INF, 12, INF, BrakeWear.NONE));
        WearYear year = SampleTasks.year(20_000);
        Set<Integer> months = new TreeSet<>();
        for (int place = 0; place < 12; place++) {
            TaskSchedule schedule = new TaskSchedule(new TaskPlan(List.of(yearly), f -> f.renewal(400_000)), 0,
                    StaggeredUpkeep.headStartMonths(place), 0, year);
            int first = schedule.next(year, 0).get(0).month();
            months.add(first);
            assertEquals(List.of(first), schedule.next(year, 1).stream().map(TaskEvent::month).toList());
        }
        assertEquals(12, months.size(), "every month has its bus");
    }

    /** By chance alone (shape 1) failures are Poisson: the variance of their number is the mean. */
    @Test
    void theSpreadOfFailuresByChanceIsTheirMean() {
        WearYear year = SampleTasks.year(20_000);
        FailureSpread spread = schedule(SampleTasks.failing(1, 40_000), 3, 60_000, year).failures(year, 3, 58);
        double repair = 300 + 58;
        assertEquals(0.5, spread.failures(), 1e-9);
        assertEquals(0.5 * repair, spread.cost(), 1e-6);
        assertEquals(Math.sqrt(0.5) * repair, spread.costDeviation(), 0.01 * repair);
        assertEquals(2 * spread.costDeviation(), spread.costing(2).costDeviation(), 1e-9);
        assertEquals(Math.sqrt(2) * spread.costDeviation(), spread.plus(spread).costDeviation(), 1e-9);
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
        UpkeepCalibration dear = UpkeepCalibration.of(1000, 400, 0.5);
        assertEquals(1.25, dear.factor(), 1e-12);
        assertEquals(0.75, dear.plus(UpkeepCalibration.of(2000, 400, 0.05)).factor(), 1e-12, "600 over 800");
        assertEquals(1, UpkeepCalibration.of(1000, 0, 0.5).factor(), 0);
        assertEquals(1, UpkeepCalibration.NONE.factor(), 0);
        assertThrows(IllegalArgumentException.class, () -> UpkeepCalibration.of(1000, 400, 0));
    }

    @Test
    void theShopNeedsTwoPeopleForHighVoltageOrNone() {
        WearYear year = SampleTasks.year(20_000);
        MaintenanceTask inspection = SampleTasks.highVoltageInspection();
        ShopCalendar calendar = new ShopCalendar(schedule(inspection, 0, 0, year).next(year, 0));
        assertEquals(6, calendar.labourHours().get(Skill.HIGH_VOLTAGE), 1e-9);
        assertEquals(3, calendar.labourHoursByMonth().get(5).get(Skill.HIGH_VOLTAGE), 1e-9);
        assertEquals(2, calendar.highVoltagePeople(400));
        assertEquals(3, calendar.highVoltagePeople(2.5));
        assertEquals(0, new ShopCalendar(List.of()).highVoltagePeople(400));
    }

    @Test
    void theShopIsIdleBusyOrOverloadedByWhatItCanGive() {
        WearYear year = SampleTasks.year(20_000);
        ShopCalendar calendar = new ShopCalendar(schedule(SampleTasks.highVoltageInspection(), 0, 0, year).next(year, 0));
        assertEquals(List.of(ShopLoad.Verdict.UNKNOWN, ShopLoad.Verdict.OVERLOADED, ShopLoad.Verdict.WITHIN,
                ShopLoad.Verdict.IDLE), List.of(0, 5, 8, 20).stream().map(h -> ShopLoad.of(calendar, h).verdict()).toList());
        assertEquals(2, ShopLoad.of(calendar, 20).monthsOver(), "3 h in June and December each");
        assertEquals(0.3, ShopLoad.of(calendar, 20).share(), 1e-9);
    }
}
