package org.amberyard.core.plan;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Finds what would make an electric bus do a route that it fails with an aged pack: every remedy on offer is evaluated by
 * driving the route again under it, alone and, for those that can be joined, together.
 *
 * <p>Remedies that cure come before those that only help; within each, what saves money comes first, then the least yearly
 * cost per distance recovered on the worst day. Keeping an engine bus always works and always comes last.
 */
public final class Remedies {
    private static final Comparator<Remedy> BEST_FIRST = Comparator
            .comparing((Remedy r) -> r.measures().contains(Remedy.Measure.KEEP_ENGINE)).thenComparing(r -> !r.cures())
            .thenComparing(r -> r.costPerYear() > 0)
            .thenComparing(r -> r.costPerYear() > 0 ? r.costPerKm().orElse(Double.MAX_VALUE) : r.costPerYear());

    private Remedies() {
    }

    /** Remedies for a fit that fails with an aged pack, best first; none for one that passes. */
    public static List<Remedy> of(StudyResult result, int plan, RouteFit fit) {
        if (fit.whenAged(result.input().middayCharging()).passes()) {
            return List.of();
        }
        FailedRoute failed = new FailedRoute(result, plan, fit);
        return Stream.concat(JoinedMeasures.of(failed).stream(), OtherBuses.of(failed).stream()).sorted(BEST_FIRST).toList();
    }
}
