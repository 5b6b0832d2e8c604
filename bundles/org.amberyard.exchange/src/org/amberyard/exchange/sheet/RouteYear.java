package org.amberyard.exchange.sheet;

import org.amberyard.model.routes.Route;
import org.amberyard.model.routes.Run;
import org.amberyard.model.site.ServiceCalendar;
import org.eclipse.emf.ecore.EAttribute;

/** What a bus drives on its route in a year. */
final class RouteYear {
    private RouteYear() {
    }

    /** Distance of a year, km; 0 without a route. */
    static double km(Route route) {
        return route == null ? 0 : route.getRuns().stream().mapToDouble(r -> r.getDistanceKm() * days(r)).sum();
    }

    /** Days of a year on which a run is driven. */
    private static int days(Run run) {
        ServiceCalendar calendar = run.getCalendar();
        return calendar == null ? 0 : calendar.eClass().getEAttributes().stream()
                .filter(f -> f.getEType().getInstanceClass() == int.class).mapToInt((EAttribute f) -> (int) calendar.eGet(f)).sum();
    }
}
