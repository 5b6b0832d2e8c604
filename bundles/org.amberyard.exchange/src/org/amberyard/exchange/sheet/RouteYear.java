package org.amberyard.exchange.sheet;

import org.amberyard.model.common.Month;
import org.amberyard.model.routes.Route;
import org.amberyard.model.routes.Run;
import org.amberyard.model.site.ServiceCalendar;
import org.amberyard.model.validation.CalendarDays;

/** What a bus drives on its route in a year. */
final class RouteYear {
    private RouteYear() {
    }

    /** True for a route of which no distance is known yet, so that nothing tells which part of a bus's distance is driven on it. */
    static boolean isUnknown(Route route) {
        return route != null && km(route) == 0;
    }

    /** Distance of a year, km; 0 without a route. */
    static double km(Route route) {
        return route == null ? 0 : route.getRuns().stream().mapToDouble(r -> r.getDistanceKm() * days(r)).sum();
    }

    /** Days of a year on which a run is driven. */
    private static int days(Run run) {
        ServiceCalendar calendar = run.getCalendar();
        return calendar == null ? 0 : Month.VALUES.stream().mapToInt(m -> (int) calendar.eGet(CalendarDays.field(m))).sum();
    }
}
