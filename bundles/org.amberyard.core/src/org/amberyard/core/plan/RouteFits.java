package org.amberyard.core.plan;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Fits of electric types on routes, by route, then by type.
 *
 * @param list the fits
 */
public record RouteFits(List<RouteFit> list) {

    public RouteFits {
        list = List.copyOf(list);
    }

    /** The fit of a type on a route, when the body fits and the route is driven. */
    public Optional<RouteFit> of(int route, int type) {
        return list.stream().filter(f -> f.route() == route && f.type() == type).findFirst();
    }

    /** The fit on a route with the largest margin when new, under a charging habit. */
    public Optional<RouteFit> best(int route, boolean midday) {
        return list.stream().filter(f -> f.route() == route)
                .max(Comparator.comparingDouble(f -> f.whenNew(midday).marginKwh()));
    }
}
