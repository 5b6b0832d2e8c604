package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds the outlooks of all routes in all plans; plans that ask the same of a route share the answer. */
final class RouteOutlooks {
    private final StudyResult result;
    private final Map<Aged, FailingDays> failing = new HashMap<>();

    RouteOutlooks(StudyResult result) {
        this.result = result;
    }

    private record Aged(RouteFit fit, double health) {
    }

    List<List<RouteOutlook>> all() {
        List<List<RouteOutlook>> plans = new ArrayList<>();
        for (int plan = 0; plan < result.plans().size(); plan++) {
            List<RouteOutlook> routes = new ArrayList<>();
            for (RouteAnswer answer : RouteAnswer.of(result, plan)) {
                routes.add(outlook(plan, answer));
            }
            plans.add(routes);
        }
        return plans;
    }

    private RouteOutlook outlook(int plan, RouteAnswer answer) {
        Optional<RouteFit> fit = answer.fit();
        return new RouteOutlook(answer, fit.map(f -> failing(f, 1)), fit.map(f -> failing(f, f.agedHealth())),
                fit.map(f -> Remedies.of(result, plan, f)).orElse(List.of()));
    }

    /** Where the worst day is done, so are all others. */
    private FailingDays failing(RouteFit fit, double health) {
        boolean midday = result.input().middayCharging();
        boolean passes = health == 1 ? fit.whenNew(midday).passes() : fit.whenAged(midday).passes();
        return passes ? FailingDays.NONE
                : failing.computeIfAbsent(new Aged(fit, health), a -> FailingDays.of(result, a.fit(), a.health()));
    }
}
