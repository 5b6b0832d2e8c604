package org.amberyard.core.upkeep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A bus's years and the shop's, counted by hand on invented tasks. */
class ShopYearTest {
    private static final double INF = Double.POSITIVE_INFINITY;
    private static final MaintenanceTask SERVICE = SampleTasks.task("Service", UpkeepCause.INSPECTION, Powertrain.ALL,
            new TaskTrigger(10_000, INF, INF, BrakeWear.NONE));

    private static TaskSchedule schedule(double ageYears, double km, WearYear year, MaintenanceTask... tasks) {
        return new TaskSchedule(new TaskPlan(List.of(tasks), law -> law.renewal(400_000)), ageYears, 0, km, year);
    }

    private static List<Integer> months(List<TaskEvent> events) {
        return events.stream().map(TaskEvent::month).toList();
    }

    @Test
    void hoursAndBrakeEnergyCountOnFromStretchToStretch() {
        TaskTrigger hours = new TaskTrigger(INF, INF, 250, BrakeWear.NONE);
        TaskTrigger linings = new TaskTrigger(INF, INF, INF, new BrakeWear(900));
        Meters stretch = new Meters(3000, 1, 100, 400);
        TaskClock after = TaskClock.NEW.walk(hours, stretch).after().walk(hours, stretch).after();
        assertEquals(50, after.walk(hours, stretch).after().since().hours(), 1e-9, "due after 250 h, of which 200 have passed");
        assertEquals(300, after.walk(linings, stretch).after().since().brakeKwh(), 1e-9, "due after 900 kWh, of which 800 have passed");
    }

    /** 1,100 h at 250 h each are 4 times and 100 h more; 2,250 kWh at 900 kWh are twice and 450 kWh more. */
    @Test
    void aPastOfHoursAndBrakesLeavesTheClockWhereItStopped() {
        TaskTrigger hours = new TaskTrigger(INF, INF, 250, BrakeWear.NONE);
        assertEquals(100, TaskClock.ofLife(hours, new Meters(40_000, 24, 1100, 0)).since().hours(), 1e-9);
        TaskTrigger linings = new TaskTrigger(INF, INF, INF, new BrakeWear(900));
        assertEquals(450, TaskClock.ofLife(linings, new Meters(40_000, 24, 1100, 2250)).since().brakeKwh(), 1e-9);
    }

    /** 25,000 km at 10,000 km a year are two and a half years of 400 h, so 1,000 h, of which the last 200 since the task was done. */
    @Test
    void hoursOfThePastAreThoseOfTheYearToComeByDistance() {
        MaintenanceTask byHours = SampleTasks.task("Oil", UpkeepCause.ENGINE, Powertrain.ALL, new TaskTrigger(INF, INF, 800, BrakeWear.NONE));
        WearYear year = new WearYear(10_000, 400, 0, 0, 10_000, Collections.nCopies(12, 1 / 12.0));
        TaskSchedule schedule = schedule(2, 25_000, year, byHours);
        assertEquals(List.of(), schedule.next(year, 2), "600 h are left");
        assertEquals(List.of(5), months(schedule.next(year, 3)), "200 h are half a year");
    }

    @Test
    void aBusThatStandsStillAgesAlone() {
        MaintenanceTask yearly = SampleTasks.task("Yearly", UpkeepCause.BODY, Powertrain.ALL, new TaskTrigger(10_000, 12, INF, BrakeWear.NONE));
        WearYear year = new WearYear(0, 0, 0, 0, 10_000, Collections.nCopies(12, 1 / 12.0));
        assertEquals(List.of(11), months(schedule(5, 60_000, year, yearly).next(year, 5)));
    }

    /** A bus a fifth heavier than the reference wears tyres as if it drove a fifth farther: 12,000 km in the year. */
    @Test
    void tyresOfAHeavierBusFallDueSooner() {
        TaskTrigger every12000 = new TaskTrigger(12_000, INF, INF, BrakeWear.NONE);
        MaintenanceTask tyres = new MaintenanceTask("Tyres", UpkeepCause.TYRES, new TaskScope(Powertrain.ALL, ""), every12000,
                Optional.empty(), Optional.of(new TyreWear(10_000)), 1800, 4, Skill.TECHNICIAN, 0);
        WearYear heavy = new WearYear(10_010, 400, 0, 0, 12_000, Collections.nCopies(12, 1 / 12.0));
        assertEquals(List.of(11), months(schedule(0, 0, heavy, tyres).next(heavy, 0)));
        WearYear reference = new WearYear(10_010, 400, 0, 0, 10_000, Collections.nCopies(12, 1 / 12.0));
        assertEquals(List.of(), schedule(0, 0, reference, tyres).next(reference, 0));
    }

    /** 1,600 kWh over 2,000 km and 12 t are 0.0667 kWh per km and t, five sixths of what is usual. */
    @Test
    void halfOfTyreWearGoesWithTheWork() {
        assertEquals(2000 * 1.2 * (0.5 + 0.5 * 5 / 6), new TyreWear(10_000).equivalentKm(2000, 12_000, 1600), 1e-9);
    }

    /** A part that wears out fails more often in the second year than in the first, and not in the months in which nothing is driven. */
    @Test
    void failuresGoOnFromTheOdometer() {
        List<Double> school = List.of(0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.0, 0.0, 0.1, 0.1, 0.1, 0.1);
        WearYear year = SampleTasks.year(20_000, school);
        TaskSchedule schedule = schedule(0, 0, year, SampleTasks.failing(3, 80_000));
        WeibullRenewal renewal = new WeibullRenewal(3, 80_000, 400_000);
        List<TaskEvent> first = schedule.next(year, 0);
        assertEquals(10, first.size());
        assertEquals(renewal.expected(20_000), first.stream().mapToDouble(TaskEvent::times).sum(), 1e-9);
        assertEquals(renewal.expected(20_000, 40_000), schedule.failures(year, 1, 58).failures(), 1e-9);
        assertEquals(renewal.expected(20_000, 40_000), schedule.next(year, 1).stream().mapToDouble(TaskEvent::times).sum(), 1e-9);
    }

    /** Once a year for 100 and 2 h at 58, and half a failure for 300 and 1 h. */
    @Test
    void theLongRunMeanCountsFailuresToo() {
        assertEquals(216 + 0.5 * 358, TaskPlan.meanPerYear(List.of(SERVICE, SampleTasks.failing(1, 20_000)), SampleTasks.year(10_000), 0, 58),
                1e-9);
    }

    @Test
    void theCalendarHasWhatFallsDueByMonthAndFailuresApart() {
        ShopCalendar calendar = new ShopCalendar(List.of(new TaskEvent(SERVICE, 9, 0, 1, false), new TaskEvent(SERVICE, 2, 0, 2, false),
                new TaskEvent(SampleTasks.failing(1, 40_000), 0, 0, 0.25, true), new TaskEvent(SERVICE, 5, 0, 1, false)));
        assertEquals(List.of(2, 5, 9), months(calendar.due()));
        assertEquals(0.25, calendar.failureHours(), 1e-12);
        assertEquals(8.25, calendar.labourHours().get(Skill.TECHNICIAN), 1e-12);
    }

    @Test
    void whatDriversDoIsNoWorkOfTheShop() {
        MaintenanceTask check = new MaintenanceTask("Daily check", UpkeepCause.INSPECTION, new TaskScope(Powertrain.ALL, ""),
                TaskTrigger.NEVER, Optional.empty(), Optional.empty(), 0, 30, Skill.DRIVER, 0);
        ShopCalendar calendar = new ShopCalendar(List.of(new TaskEvent(check, 4, 0, 1, false), new TaskEvent(SERVICE, 4, 0, 3, false)));
        assertEquals(new ShopLoad(6, 72, 0), ShopLoad.of(calendar, 72), "6 h in May, as many as a twelfth of 72 h");
        assertEquals(1, ShopLoad.of(calendar, 71).monthsOver());
        assertEquals(0, ShopLoad.of(calendar, 0).monthsOver());
        assertEquals(0, ShopLoad.of(calendar, 0).share());
    }

    @Test
    void aShopThatIsJustFullOrJustBusyIsNeither() {
        assertEquals(ShopLoad.Verdict.WITHIN, new ShopLoad(100, 100, 0).verdict());
        assertEquals(ShopLoad.Verdict.WITHIN, new ShopLoad(60, 100, 0).verdict());
        assertEquals("partly idle", new ShopLoad(59, 100, 0).verdict().word());
        assertEquals("overloaded", new ShopLoad(101, 100, 0).verdict().word());
    }

    @Test
    void upkeepByRateRisesWithAge() {
        assertEquals(1000 * (0.3 + 5 * 0.02), new UpkeepRate(0.3, 0.02).cost(1000, 5), 1e-9);
    }

    @Test
    void calibrationsAddUpBusesAndDistances() {
        UpkeepCalibration two = UpkeepCalibration.of(1000, 400, 0.5).plus(UpkeepCalibration.of(2000, 400, 0.05));
        assertEquals(new UpkeepCalibration(2, 3000, 800, 600), two);
        assertEquals(1.3, UpkeepCalibration.ofEarlier(1.3).factor(), 1e-12);
    }

    @Test
    void tasksAreThoseOfThePowertrain() {
        MaintenanceTask highVoltage = SampleTasks.highVoltageInspection();
        UpkeepRules rules = new UpkeepRules(List.of(SERVICE, highVoltage), 58, 400, 0, Map.of());
        assertEquals(List.of(SERVICE), rules.tasks(Powertrain.DIESEL, "C"));
        assertEquals(List.of(SERVICE, highVoltage), rules.tasks(Powertrain.ELECTRIC, "C"));
    }

    @Test
    void aRenewalIsSolvedOnceUntilTooManyPileUp() {
        Renewals renewals = new Renewals();
        FailureLaw law = new FailureLaw(1, 40_000);
        WeibullRenewal first = renewals.of(law, 200_000);
        assertSame(first, renewals.of(new FailureLaw(1, 40_000), 200_000));
        IntStream.range(0, 300).forEach(i -> renewals.of(law, 300_000 + i));
        assertNotSame(first, renewals.of(law, 200_000));
    }
}
