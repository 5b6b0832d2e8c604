package org.amberyard.study;

import java.util.List;
import java.util.Locale;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.plan.VehicleYear;
import org.amberyard.model.fleet.FleetPackage;
import org.amberyard.model.study.Study;
import org.amberyard.model.validation.Finding;
import org.amberyard.model.validation.Severity;

/** Says where the model's fuel is far from what a bus's log says. */
final class CalibrationFindings {
    /** Beyond this the physics or the log should be looked at before either is believed. */
    private static final double FAR = 0.25;

    private final Study study;
    private final StudyResult result;

    CalibrationFindings(Study study, StudyResult result) {
        this.study = study;
        this.result = result;
    }

    List<Finding> list() {
        return result.baseline().fleet().inYear(0).stream()
                .filter(v -> Math.abs(v.vehicle().fuelFactor() - 1) > FAR).map(this::finding).toList();
    }

    private Finding finding(VehicleYear record) {
        double factor = record.vehicle().fuelFactor();
        String text = String.format(Locale.ROOT,
                "Bus %s burns %.0f %% %s by its log than the model says for its route; check the log, the route and the vehicle type.",
                record.vehicle().unit(), 100 * Math.abs(factor - 1), factor > 1 ? "more" : "less");
        return new Finding(Severity.WARNING, study.getBuses().get(record.place()),
                FleetPackage.Literals.BUS__MEASURED_KM_PER_L, text);
    }
}
