package org.amberyard.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.amberyard.core.consumption.Calibration;
import org.amberyard.core.duty.ElectricSpec;
import org.amberyard.core.duty.EnergyModel;
import org.amberyard.core.duty.RouteCalibration;
import org.amberyard.core.duty.RouteInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.plan.VehicleYear;
import org.amberyard.model.fleet.FleetPackage;
import org.amberyard.model.routes.Route;
import org.amberyard.model.routes.RoutesPackage;
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
        List<Finding> findings = new ArrayList<>(result.baseline().fleet().inYear(0).stream()
                .filter(v -> Math.abs(v.vehicle().fuelFactor() - 1) > FAR).map(this::finding).toList());
        for (int route = 0; route < study.getRoutes().size(); route++) {
            Route of = study.getRoutes().get(route);
            RouteCalibration calibration = result.duty().calibration(route);
            calibration.electric().filter(Calibration::isSuspicious).ifPresent(c -> findings.add(finding(of, "energy", c)));
            calibration.engine().filter(Calibration::isSuspicious).ifPresent(c -> findings.add(finding(of, "fuel", c)));
            without(route).ifPresent(types -> findings.add(new Finding(Severity.INFO, of, RoutesPackage.Literals.ROUTE__ENERGY_MODEL,
                    "Route " + of.getName() + " goes by consumption curves, but " + types
                            + " have none and go by physics; fit or enter one, or compare with care.")));
        }
        return List.copyOf(findings);
    }

    /** Electric types of the route's body that have no curve, where the route goes by curves and others have one. */
    private Optional<String> without(int route) {
        RouteInput of = result.input().duty().routes().get(route);
        List<ElectricSpec> fitting = result.input().types().stream().flatMap(t -> t.electric().stream())
                .filter(e -> e.body().bodyType().equals(of.bodyType())).toList();
        String names = fitting.stream().filter(e -> e.curve().isEmpty()).map(ElectricSpec::name)
                .collect(Collectors.joining(", "));
        return of.energyModel() == EnergyModel.CURVE && !names.isEmpty() ? Optional.of(names) : Optional.empty();
    }

    private static Finding finding(Route route, String subject, Calibration calibration) {
        double error = calibration.rawErrorShare();
        String text = String.format(Locale.ROOT, "On route %s the model says %.0f %% %s %s than was measured (%d %s), beyond the "
                + "25 %% within which a calibration can be trusted; check the measurements, the route and the vehicle type.",
                route.getName(), 100 * Math.abs(error), error > 0 ? "more" : "less", subject, calibration.pairs(),
                calibration.pairs() == 1 ? "measurement" : "measurements");
        return new Finding(Severity.WARNING, route, null, text);
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
