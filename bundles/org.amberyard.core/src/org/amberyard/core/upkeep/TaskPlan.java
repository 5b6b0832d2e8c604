package org.amberyard.core.upkeep;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The tasks of a vehicle type with the renewals of their failures, solved once for all its buses. */
public final class TaskPlan {
    private final List<MaintenanceTask> tasks;
    private final List<Optional<WeibullRenewal>> renewals;

    /**
     * The plan of a type.
     *
     * @param tasks tasks that apply to it
     * @param renewalOf the renewal of a law; may answer one that was solved for another type
     */
    public TaskPlan(List<MaintenanceTask> tasks, Function<FailureLaw, WeibullRenewal> renewalOf) {
        this.tasks = List.copyOf(tasks);
        this.renewals = tasks.stream().map(t -> t.failures().map(renewalOf)).toList();
    }

    /** The tasks. */
    public List<MaintenanceTask> tasks() {
        return tasks;
    }

    List<Optional<WeibullRenewal>> renewals() {
        return renewals;
    }

    /** Cost of a year driven again and again, on a bus of an age: the long-run mean without the lumps, base-date money. */
    public static double meanPerYear(List<MaintenanceTask> tasks, WearYear year, double ageYears, double labourRatePerHour) {
        double sum = 0;
        for (MaintenanceTask task : tasks) {
            double times = task.trigger().perStretch(task.meters(year))
                    + task.failures().map(f -> year.km() / f.meanKm()).orElse(0.0);
            sum += times * task.cost(ageYears, labourRatePerHour);
        }
        return sum;
    }
}
