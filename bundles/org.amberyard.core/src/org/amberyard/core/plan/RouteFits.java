package org.amberyard.core.plan;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.amberyard.core.duty.BlockCheck;

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

    /**
     * The best fit on a route with a new pack, under a charging habit: of those that pass, the one with the largest margin;
     * where none passes, the one with the most energy to draw.
     */
    public Optional<RouteFit> best(int route, boolean midday) {
        return list.stream().filter(f -> f.route() == route)
                .max(Comparator.comparing((RouteFit f) -> f.whenNew(midday).passes())
                        .thenComparingDouble(f -> weight(f.whenNew(midday))));
    }

    private static double weight(BlockCheck.Outcome outcome) {
        return outcome.passes() ? outcome.marginKwh() : outcome.usableKwh();
    }
}
