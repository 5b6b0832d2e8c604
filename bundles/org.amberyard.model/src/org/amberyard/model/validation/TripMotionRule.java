package org.amberyard.model.validation;

import org.amberyard.model.routes.RoutesPackage;
import org.amberyard.model.routes.RoutesPackage.Literals;
import org.amberyard.model.routes.Trip;
import org.amberyard.model.study.Study;

/** A trip can be driven in its time, and leaves some of it at the destination. */
final class TripMotionRule implements Rule {
    /** No school bus drives faster over hours. */
    private static final double FASTEST_KMH = 110;
    /** Mean speed on the road at which the time on a trip is worked out. */
    private static final double ROAD_KMH = 65;

    @Override
    public void check(Study study, Findings findings) {
        study.getTrips().stream().filter(t -> t.getDurationH() > 0 && t.getRoundTripKm() > 0)
                .forEach(t -> check(t, findings));
    }

    private static void check(Trip trip, Findings findings) {
        double meanKmh = trip.getRoundTripKm() / trip.getDurationH();
        if (meanKmh > FASTEST_KMH) {
            findings.error(trip, Literals.TRIP__DURATION_H, fact(trip, meanKmh, findings)
                    + ", faster than any school bus; correct distance or time.");
        } else if (meanKmh > ROAD_KMH) {
            findings.warning(trip, Literals.TRIP__DURATION_H, fact(trip, meanKmh, findings)
                    + ", so no time is left at the destination; check both.");
        }
    }

    private static String fact(Trip trip, double meanKmh, Findings findings) {
        return findings.fact(trip, Literals.TRIP__DURATION_H) + " for " + findings.value(trip, Literals.TRIP__ROUND_TRIP_KM)
                + ", a mean speed of " + findings.value(trip, RoutesPackage.Literals.RUN__TOP_SPEED_KMH, meanKmh);
    }
}
