package org.amberyard.model.validation;

import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.routes.RoutesPackage.Literals;
import org.amberyard.model.routes.Trip;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.VehicleType;

/** The bus of a trip suits its riders. */
final class TripBusRule implements Rule {

    @Override
    public void check(Study study, Findings findings) {
        study.getTrips().stream().filter(t -> t.getBus() != null && t.getBus().getType() != null)
                .forEach(t -> check(t, t.getBus().getType(), findings));
    }

    private static void check(Trip trip, VehicleType type, Findings findings) {
        if (type.getBodyType() != trip.getBodyType()) {
            findings.warning(trip, Literals.TRIP__BUS, "its riders need a type " + trip.getBodyType().getLiteral()
                    + " bus but bus " + ElementNames.of(trip.getBus()) + " is of type " + type.getBodyType().getLiteral()
                    + "; change one of them.");
        }
    }
}
