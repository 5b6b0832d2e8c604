package org.amberyard.model.validation;

import org.amberyard.model.routes.Route;
import org.amberyard.model.routes.RoutesPackage.Literals;
import org.amberyard.model.routes.Run;
import org.amberyard.model.routes.RunKind;
import org.amberyard.model.study.Study;

/** A run departs at the time of day that its kind says; morning and afternoon are easily mixed up when typed. */
final class RunClockRule implements Rule {
    private static final int HALF_DAY_MIN = 12 * 60;
    private static final int MIDDAY_FROM_MIN = 9 * 60;
    private static final int MIDDAY_TO_MIN = 15 * 60;

    @Override
    public void check(Study study, Findings findings) {
        for (Route route : study.getRoutes()) {
            for (Run run : route.getRuns()) {
                if (!fits(run.getKind(), run.getDepartureMin())) {
                    findings.warning(run, Literals.RUN__DEPARTURE_MIN, text(run, findings));
                }
            }
        }
    }

    private static boolean fits(RunKind kind, int departureMin) {
        return switch (kind) {
            case MORNING -> departureMin < HALF_DAY_MIN;
            case MIDDAY -> departureMin >= MIDDAY_FROM_MIN && departureMin < MIDDAY_TO_MIN;
            case AFTERNOON, LATE -> departureMin >= HALF_DAY_MIN;
            case SUMMER -> true;
        };
    }

    private static String text(Run run, Findings findings) {
        String head = "departs " + findings.value(run, Literals.RUN__DEPARTURE_MIN) + " but its kind is "
                + run.getKind().getLiteral();
        int otherHalf = (run.getDepartureMin() + HALF_DAY_MIN) % (2 * HALF_DAY_MIN);
        return fits(run.getKind(), otherHalf)
                ? head + "; was " + findings.value(run, Literals.RUN__DEPARTURE_MIN, otherHalf) + " meant?"
                : head + "; correct the time or the kind.";
    }
}
