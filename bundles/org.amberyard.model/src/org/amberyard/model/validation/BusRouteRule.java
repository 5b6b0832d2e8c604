package org.amberyard.model.validation;

import org.amberyard.model.fleet.Bus;
import org.amberyard.model.fleet.FleetPackage.Literals;
import org.amberyard.model.fleet.Role;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.routes.Route;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.VehicleType;

/** A bus suits the route that it runs, and its role says whether it runs one. */
final class BusRouteRule implements Rule {

    @Override
    public void check(Study study, Findings findings) {
        for (Bus bus : study.getBuses()) {
            checkRole(bus, findings);
            if (bus.getRoute() != null && bus.getType() != null) {
                checkBody(bus, bus.getRoute(), bus.getType(), findings);
                checkLift(bus, bus.getRoute(), bus.getType(), findings);
            }
        }
    }

    private static void checkRole(Bus bus, Findings findings) {
        String role = bus.getRole().getLiteral();
        if (bus.getRole() == Role.ROUTE && bus.getRoute() == null) {
            findings.warning(bus, Literals.BUS__ROUTE, "its role is " + role + " but it has no route; choose one, or make "
                    + "it a spare.");
        }
        if (bus.getRole() != Role.ROUTE && bus.getRoute() != null) {
            findings.warning(bus, Literals.BUS__ROLE, "its role is " + role + " but it has route "
                    + ElementNames.of(bus.getRoute()) + "; clear the route or change the role.");
        }
    }

    private static void checkBody(Bus bus, Route route, VehicleType type, Findings findings) {
        if (type.getBodyType() != route.getBodyType()) {
            findings.error(bus, Literals.BUS__TYPE, ElementNames.of(type) + " is a type "
                    + type.getBodyType().getLiteral() + " bus but route " + ElementNames.of(route) + " needs a type "
                    + route.getBodyType().getLiteral() + " bus; change one of them.");
        }
    }

    private static void checkLift(Bus bus, Route route, VehicleType type, Findings findings) {
        if (route.isLiftRequired() && !type.isLift()) {
            findings.warning(bus, Literals.BUS__TYPE, "route " + ElementNames.of(route) + " needs a lift but "
                    + ElementNames.of(type) + " has none; choose another type.");
        }
    }
}
