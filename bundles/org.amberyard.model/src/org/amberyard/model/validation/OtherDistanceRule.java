package org.amberyard.model.validation;

import org.amberyard.model.fleet.Bus;
import org.amberyard.model.fleet.FleetPackage.Literals;
import org.amberyard.model.study.Study;

/** Distance beyond a route is driven at the mean consumption of the routes of the same body type, so there must be one. */
final class OtherDistanceRule implements Rule {

    @Override
    public void check(Study study, Findings findings) {
        for (Bus bus : study.getBuses()) {
            boolean known = bus.getType() == null || study.getRoutes().stream()
                    .anyMatch(r -> r.getBodyType() == bus.getType().getBodyType() && !r.getRuns().isEmpty());
            if (bus.getOtherKmPerYear() > 0 && !known) {
                findings.error(bus, Literals.BUS__OTHER_KM_PER_YEAR, findings.fact(bus, Literals.BUS__OTHER_KM_PER_YEAR)
                        + " but no route needs a type " + bus.getType().getBodyType().getLiteral()
                        + " bus, so its consumption is unknown; add such a route or enter 0.");
            }
        }
    }
}
