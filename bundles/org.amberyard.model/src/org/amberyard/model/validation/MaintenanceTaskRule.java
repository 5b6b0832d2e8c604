package org.amberyard.model.validation;

import org.amberyard.model.fleet.FleetPackage.Literals;
import org.amberyard.model.fleet.MaintenanceTask;
import org.amberyard.model.study.Study;

/** A task of the shop falls due at some time, and for body types that exist. */
final class MaintenanceTaskRule implements Rule {
    @Override
    public void check(Study study, Findings findings) {
        study.getMaintenanceTasks().forEach(task -> check(task, findings));
    }

    private static void check(MaintenanceTask task, Findings findings) {
        double intervals = task.getEveryKm() + task.getEveryMonths() + task.getEveryHours() + task.getLiningKwh()
                + task.getFailureMeanKm();
        if (intervals == 0) {
            findings.error(task, Literals.MAINTENANCE_TASK__EVERY_KM,
                    "The task never falls due: its distance, time, hours, linings and distance to failure are all zero; give "
                            + "at least one of them.");
        }
        if (task.getTyreReferenceKg() > 0 && task.getEveryKm() == 0) {
            findings.error(task, Literals.MAINTENANCE_TASK__TYRE_REFERENCE_KG,
                    findings.fact(task, Literals.MAINTENANCE_TASK__TYRE_REFERENCE_KG)
                            + " but the task has no distance that could hold for it; give the distance.");
        }
        BodyLetters.check(task, Literals.MAINTENANCE_TASK__BODY_TYPES, findings);
    }
}
