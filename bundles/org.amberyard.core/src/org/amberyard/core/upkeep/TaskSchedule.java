package org.amberyard.core.upkeep;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The tasks of one bus, year by year. Each task keeps its own clock, so that years add up: the events of a stretch are those of
 * its parts. Within a month the bus is driven evenly; months stand from January to December.
 */
public final class TaskSchedule {
    private final List<MaintenanceTask> tasks;
    private final List<Optional<WeibullRenewal>> renewals;
    private final List<TaskClock> clocks = new ArrayList<>();
    private double odometerKm;

    /**
     * The schedule of a bus.
     *
     * @param plan the tasks that apply to it
     * @param ageYears its age now
     * @param headStartMonths months by which its clocks are ahead, see {@link StaggeredUpkeep}
     * @param odometerKm its odometer now, km
     * @param year the year to come, from which hours and brakes of its past are drawn in proportion to the distance
     */
    public TaskSchedule(TaskPlan plan, double ageYears, double headStartMonths, double odometerKm, WearYear year) {
        this.tasks = plan.tasks();
        this.renewals = plan.renewals();
        this.odometerKm = odometerKm;
        double past = year.km() > 0 ? odometerKm / year.km() : 0;
        for (MaintenanceTask task : tasks) {
            Meters lived = task.meters(year).times(past);
            Meters life = new Meters(lived.km(), 12 * Math.max(0, ageYears) + headStartMonths, lived.hours(), lived.brakeKwh());
            clocks.add(TaskClock.ofLife(task.trigger(), life));
        }
    }

    /** Drives the next year and tells what falls due, task by task and month by month. */
    public List<TaskEvent> next(WearYear year, double ageYears) {
        List<TaskEvent> events = new ArrayList<>();
        Driven plain = Driven.of(Meters.of(year), year);
        for (int i = 0; i < tasks.size(); i++) {
            MaintenanceTask task = tasks.get(i);
            addDue(i, task.tyres().isPresent() ? Driven.of(task.meters(year), year) : plain, ageYears, events);
            renewals.get(i).ifPresent(r -> addFailures(task, r, year, ageYears, events));
        }
        odometerKm += year.km();
        return events;
    }

    /** What failures of the next year come to, before it is driven. */
    public FailureSpread failures(WearYear year, double ageYears, double labourRatePerHour) {
        FailureSpread all = FailureSpread.NONE;
        for (int i = 0; i < tasks.size(); i++) {
            if (renewals.get(i).isPresent()) {
                WeibullRenewal renewal = renewals.get(i).get();
                double to = odometerKm + year.km();
                double expected = renewal.expected(odometerKm, to);
                all = all.plus(new FailureSpread(expected, expected, renewal.variance(odometerKm, to)).costing(tasks.get(i).cost(ageYears, labourRatePerHour)));
            }
        }
        return all;
    }

    /**
     * What a task's meters count.
     *
     * @param year in the year
     * @param months in each month, January first
     */
    private record Driven(Meters year, List<Meters> months) {
        static Driven of(Meters whole, WearYear year) {
            return new Driven(whole, year.monthShares().stream()
                    .map(share -> new Meters(whole.km() * share, 1, whole.hours() * share, whole.brakeKwh() * share)).toList());
        }
    }

    private void addDue(int index, Driven driven, double ageYears, List<TaskEvent> events) {
        MaintenanceTask task = tasks.get(index);
        if (task.trigger().equals(TaskTrigger.NEVER)) {
            return;
        }
        TaskClock clock = clocks.get(index);
        if (clock.restsFor(task.trigger(), driven.year)) {
            clocks.set(index, clock.past(driven.months));
            return;
        }
        for (int month = 0; month < WearYear.MONTHS; month++) {
            TaskClock.Walk walk = clock.walk(task.trigger(), driven.months.get(month));
            clock = walk.after();
            if (walk.times() > 0) {
                events.add(new TaskEvent(task, month, ageYears, walk.times(), false));
            }
        }
        clocks.set(index, clock);
    }

    private void addFailures(MaintenanceTask task, WeibullRenewal renewal, WearYear year, double ageYears,
            List<TaskEvent> events) {
        double from = odometerKm;
        for (int month = 0; month < WearYear.MONTHS; month++) {
            double to = from + year.km() * year.monthShares().get(month);
            double times = renewal.expected(from, to);
            if (times > 0) {
                events.add(new TaskEvent(task, month, ageYears, times, true));
            }
            from = to;
        }
    }
}
