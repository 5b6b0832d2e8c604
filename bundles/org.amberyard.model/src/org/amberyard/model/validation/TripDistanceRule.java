package org.amberyard.model.validation;

import org.amberyard.model.fleet.Bus;
import org.amberyard.model.fleet.FleetPackage.Literals;
import org.amberyard.model.routes.Trip;
import org.amberyard.model.study.Study;

/**
 * A bus drives about as far beyond its route as its trips add up to. Costs and energy of a year go by the other distance of
 * the bus; trips never add to it, so the two must agree.
 */
final class TripDistanceRule implements Rule {
    private static final double FAR = 0.25;

    @Override
    public void check(Study study, Findings findings) {
        for (Bus bus : study.getBuses()) {
            double tripsKm = study.getTrips().stream().filter(t -> t.getBus() == bus).mapToDouble(Trip::getRoundTripKm).sum();
            double otherKm = bus.getOtherKmPerYear();
            if (tripsKm > 0 && Math.abs(tripsKm - otherKm) > FAR * Math.max(tripsKm, otherKm)) {
                findings.warning(bus, Literals.BUS__OTHER_KM_PER_YEAR, findings.fact(bus, Literals.BUS__OTHER_KM_PER_YEAR)
                        + " but its trips come to " + findings.value(bus, Literals.BUS__OTHER_KM_PER_YEAR, tripsKm)
                        + "; costs go by the former alone, so let it cover the trips.");
            }
        }
    }
}
