package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds the outlooks of all routes in all plans; plans that ask the same of a route share the answer. */
final class RouteOutlooks {
    private final StudyResult result;

    RouteOutlooks(StudyResult result) {
        this.result = result;
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
        return new RouteOutlook(answer, fit.map(result::outlook), fit.map(f -> Remedies.of(result, plan, f)).orElse(List.of()));
    }
}
