package org.amberyard.core.upkeep;

import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** Invented tasks and years for tests. */
public final class SampleTasks {
    public static final double INF = Double.POSITIVE_INFINITY;

    private SampleTasks() {
    }

    public static MaintenanceTask task(String name, UpkeepCause cause, Powertrain powertrain, TaskTrigger trigger) {
        return new MaintenanceTask(name, cause, new TaskScope(powertrain, ""), trigger, Optional.empty(), Optional.empty(), 100,
                2, Skill.TECHNICIAN, 0.1);
    }

    public static MaintenanceTask failing(double shape, double meanKm) {
        return new MaintenanceTask("Alternator", UpkeepCause.ELECTRICAL, new TaskScope(Powertrain.ALL, ""), TaskTrigger.NEVER,
                Optional.of(new FailureLaw(shape, meanKm)), Optional.empty(), 300, 1, Skill.TECHNICIAN, 0);
    }

    public static MaintenanceTask highVoltageInspection() {
        return new MaintenanceTask("High-voltage inspection", UpkeepCause.HIGH_VOLTAGE, new TaskScope(Powertrain.ELECTRIC, ""),
                new TaskTrigger(INF, 6, INF, BrakeWear.NONE), Optional.empty(), Optional.empty(), 0, 3, Skill.HIGH_VOLTAGE, 0);
    }

    public static WearYear year(double km) {
        return year(km, Collections.nCopies(12, 1 / 12.0));
    }

    public static WearYear year(double km, List<Double> monthShares) {
        return new WearYear(km, km / 30, km * 0.2, 0, 10_000, monthShares);
    }
}
