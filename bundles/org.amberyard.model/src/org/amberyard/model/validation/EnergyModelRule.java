package org.amberyard.model.validation;

import org.amberyard.model.routes.EnergyModel;
import org.amberyard.model.routes.Route;
import org.amberyard.model.routes.RoutesPackage.Literals;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.ElectricType;

/** A route that is modelled by consumption curves has a vehicle type with a curve. */
final class EnergyModelRule implements Rule {

    @Override
    public void check(Study study, Findings findings) {
        for (Route route : study.getRoutes()) {
            if (route.getEnergyModel() == EnergyModel.CURVE && !hasCurve(study, route)) {
                findings.warning(route, Literals.ROUTE__ENERGY_MODEL, findings.fact(route, Literals.ROUTE__ENERGY_MODEL)
                        + " but no electric type " + route.getBodyType().getLiteral()
                        + " bus has one, so it stays with the physics; fit or enter a curve, or choose the physics.");
            }
        }
    }

    private static boolean hasCurve(Study study, Route route) {
        return study.getVehicleTypes().stream().anyMatch(t -> t instanceof ElectricType electric
                && electric.getBodyType() == route.getBodyType() && electric.getCurveBaseKwhPerKm() > 0);
    }
}
