package org.amberyard.model.validation;

import java.util.HashMap;
import java.util.Map;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.fleet.FleetPackage;
import org.amberyard.model.fleet.Role;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.routes.Route;
import org.amberyard.model.study.Study;

/** Each route is run by one bus. */
final class RouteCoverRule implements Rule {

    @Override
    public void check(Study study, Findings findings) {
        Map<Route, Bus> first = new HashMap<>();
        for (Bus bus : study.getBuses()) {
            if (bus.getRole() == Role.ROUTE && bus.getRoute() != null) {
                Bus other = first.putIfAbsent(bus.getRoute(), bus);
                if (other != null) {
                    findings.warning(bus, FleetPackage.Literals.BUS__ROUTE, "route " + ElementNames.of(bus.getRoute())
                            + " has bus " + ElementNames.of(other)
                            + " already, so its distance counts twice; choose another route or make one a spare.");
                }
            }
        }
        study.getRoutes().stream().filter(r -> !first.containsKey(r)).forEach(r -> findings.warning(r, null,
                "no bus runs it, so its distance is not in the costs; assign a route bus."));
    }
}
