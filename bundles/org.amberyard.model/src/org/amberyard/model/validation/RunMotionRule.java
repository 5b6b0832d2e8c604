package org.amberyard.model.validation;

import java.util.Locale;
import org.amberyard.model.routes.Route;
import org.amberyard.model.routes.RoutesPackage.Literals;
import org.amberyard.model.routes.Run;
import org.amberyard.model.study.Study;

/** A run can be driven: in its time, at its top speed, on roads. */
final class RunMotionRule implements Rule {
    /** Roads that a school bus serves are rarely steeper over any length. */
    private static final double STEEPEST_MEAN_GRADE = 0.10;

    @Override
    public void check(Study study, Findings findings) {
        for (Route route : study.getRoutes()) {
            for (Run run : route.getRuns()) {
                checkSpeed(run, findings);
                checkClimb(run, findings);
            }
        }
    }

    private static void checkSpeed(Run run, Findings findings) {
        double topKm = run.getTopSpeedKmh() * run.getDurationMin() / 60;
        if (topKm > 0 && run.getDistanceKm() > topKm) {
            findings.warning(run, Literals.RUN__DURATION_MIN, findings.value(run, Literals.RUN__DISTANCE_KM) + " in "
                    + findings.value(run, Literals.RUN__DURATION_MIN) + " takes a mean speed of "
                    + String.format(Locale.ROOT, "%.2f", run.getDistanceKm() / topKm) + " times the top speed of "
                    + findings.value(run, Literals.RUN__TOP_SPEED_KMH) + "; correct distance, duration or top speed.");
        }
    }

    private static void checkClimb(Run run, Findings findings) {
        double uphillM = run.getDistanceKm() * 1000 / 2;
        if (run.getClimbM() > STEEPEST_MEAN_GRADE * uphillM && uphillM > 0) {
            findings.warning(run, Literals.RUN__CLIMB_M, findings.fact(run, Literals.RUN__CLIMB_M) + " on "
                    + findings.value(run, Literals.RUN__DISTANCE_KM)
                    + ", steeper than 10 % over the uphill half; was it entered in another unit?");
        }
    }
}
