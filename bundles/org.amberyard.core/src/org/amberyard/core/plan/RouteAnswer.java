package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What a plan means for one route: the electric type that serves it at the end of the study, and how that type fits. Where
 * the plan leaves the route to an engine, the best-fitting electric type stands in.
 *
 * @param route place of the route
 * @param assignedType electric type that serves the route at the end of the study, if one does
 * @param fit fit of the assigned type, else of the best-fitting type; empty when that body does not fit the route, no
 *            electric type of its body is listed or the route never runs
 */
public record RouteAnswer(int route, OptionalInt assignedType, Optional<RouteFit> fit) {

    /** Answers of a plan for all routes, in their order. */
    public static List<RouteAnswer> of(StudyResult result, int plan) {
        List<RouteAnswer> answers = new ArrayList<>();
        for (int route = 0; route < result.input().duty().routes().size(); route++) {
            answers.add(of(result.input(), result.plans().get(plan), route));
        }
        return List.copyOf(answers);
    }

    /** True when an electric bus serves the route at the end of the study. */
    public boolean electric() {
        return assignedType.isPresent();
    }

    /** True when the type passes the worst day with a new pack under a charging habit. */
    public boolean passesNew(boolean midday) {
        return fit.map(f -> f.whenNew(midday).passes()).orElse(false);
    }

    /** True when the type passes the worst day with an aged pack under a charging habit. */
    public boolean passesAged(boolean midday) {
        return fit.map(f -> f.whenAged(midday).passes()).orElse(false);
    }

    private static RouteAnswer of(StudyInput study, PlanResult plan, int route) {
        List<Integer> types = electricTypes(study, plan.fleet(), route);
        if (types.isEmpty()) {
            return new RouteAnswer(route, OptionalInt.empty(), plan.fits().best(route, study.middayCharging()));
        }
        Optional<RouteFit> unfit = Optional.empty();
        List<Optional<RouteFit>> fits = types.stream().map(t -> plan.fits().of(route, t)).toList();
        return fits.contains(unfit) ? new RouteAnswer(route, OptionalInt.of(types.get(fits.indexOf(unfit))), unfit)
                : ofWeakest(route, fits.stream().flatMap(Optional::stream).toList(), study);
    }

    /** Several buses may share a route; the one with the least margin decides. */
    private static RouteAnswer ofWeakest(int route, List<RouteFit> fits, StudyInput study) {
        boolean midday = study.middayCharging();
        RouteFit weakest = fits.stream()
                .min(Comparator.comparingDouble(f -> f.whenNew(midday).marginKwh())).orElseThrow();
        return new RouteAnswer(route, OptionalInt.of(weakest.type()), Optional.of(weakest));
    }

    private static List<Integer> electricTypes(StudyInput study, FleetHistory fleet, int route) {
        List<Integer> types = new ArrayList<>();
        for (int place = 0; place < fleet.fleetAtEnd().size(); place++) {
            boolean serves = Objects.equals(study.buses().get(place).route(), OptionalInt.of(route));
            fleet.fleetAtEnd().get(place).map(Vehicle::type)
                    .filter(t -> serves && study.types().get(t).electric().isPresent()).ifPresent(types::add);
        }
        return types;
    }
}
