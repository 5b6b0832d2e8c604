package org.amberyard.model.validation;

import java.util.List;
import org.amberyard.model.common.Month;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.routes.Route;
import org.amberyard.model.routes.RoutesPackage.Literals;
import org.amberyard.model.routes.Run;
import org.amberyard.model.site.ServiceCalendar;
import org.amberyard.model.study.Study;

/** A route has runs, and on each day its bus has ended one before it begins the next. */
final class RunOrderRule implements Rule {

    /** Whether two runs are driven on the same day. */
    private enum Together {
        SURELY, MAYBE, NEVER
    }

    @Override
    public void check(Study study, Findings findings) {
        for (Route route : study.getRoutes()) {
            if (route.getRuns().isEmpty()) {
                findings.error(route, Literals.ROUTE__RUNS, "it has no run; add one or delete the route.");
            }
            checkRuns(route.getRuns(), findings);
        }
    }

    private static void checkRuns(List<Run> runs, Findings findings) {
        for (int later = 1; later < runs.size(); later++) {
            for (int earlier = 0; earlier < later; earlier++) {
                checkPair(runs.get(earlier), runs.get(later), findings);
            }
        }
    }

    private static void checkPair(Run earlier, Run later, Findings findings) {
        double endMin = earlier.getDepartureMin() + earlier.getDurationMin();
        Together together = together(earlier.getCalendar(), later.getCalendar());
        if (later.getDepartureMin() >= endMin || together == Together.NEVER) {
            return;
        }
        String text = text(earlier, later, endMin, findings);
        if (together == Together.SURELY) {
            findings.error(later, Literals.RUN__DEPARTURE_MIN, text);
        } else {
            findings.warning(later, Literals.RUN__DEPARTURE_MIN, text + " Their calendars share a month, so they may be "
                    + "driven on the same day.");
        }
    }

    private static String text(Run earlier, Run later, double endMin, Findings findings) {
        String head = "departs " + findings.value(later, Literals.RUN__DEPARTURE_MIN);
        if (later.getDepartureMin() < earlier.getDepartureMin()) {
            return head + " but stands after run " + ElementNames.of(earlier) + ", which departs "
                    + findings.value(earlier, Literals.RUN__DEPARTURE_MIN) + "; put the runs in the order of the day.";
        }
        int wholeMin = (int) Math.ceil(endMin);
        return head + " before run " + ElementNames.of(earlier) + " has ended at "
                + findings.value(earlier, Literals.RUN__DEPARTURE_MIN, wholeMin)
                + "; let it depart later or give it to another route.";
    }

    private static Together together(ServiceCalendar one, ServiceCalendar other) {
        if (one == null || other == null) {
            return Together.NEVER;
        }
        Together strongest = Together.NEVER;
        for (Month month : Month.VALUES) {
            int days = CalendarDays.of(one, month);
            int otherDays = CalendarDays.of(other, month);
            if (days > 0 && otherDays > 0) {
                // More days together than the month has: at least one day has both.
                if (one == other || days + otherDays > CalendarDays.most(month)) {
                    return Together.SURELY;
                }
                strongest = Together.MAYBE;
            }
        }
        return strongest;
    }
}
