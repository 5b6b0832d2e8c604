package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalInt;
import org.amberyard.core.duty.RouteInput;
import org.amberyard.core.duty.RunInput;
import org.amberyard.core.upkeep.WearYear;

/** Share of a year's distance in each month: by the route's runs, else by those of all routes, else evenly by month. */
final class DrivingMonths {
    private final List<List<Double>> routes;
    private final List<Double> all;

    DrivingMonths(List<RouteInput> routes) {
        this.all = shares(routes, Collections.nCopies(WearYear.MONTHS, 1.0 / WearYear.MONTHS));
        this.routes = routes.stream().map(route -> shares(List.of(route), all)).toList();
    }

    /** Shares of a bus on a route, or of one without. */
    List<Double> of(OptionalInt route) {
        return route.isPresent() ? routes.get(route.getAsInt()) : all;
    }

    private static List<Double> shares(List<RouteInput> routes, List<Double> without) {
        List<Double> km = new ArrayList<>();
        for (int month = 0; month < WearYear.MONTHS; month++) {
            km.add(kmIn(month, routes));
        }
        double sum = km.stream().mapToDouble(Double::doubleValue).sum();
        return sum > 0 ? List.copyOf(km.stream().map(k -> k / sum).toList()) : without;
    }

    private static double kmIn(int month, List<RouteInput> routes) {
        double km = 0;
        for (RouteInput route : routes) {
            for (RunInput run : route.runs()) {
                km += run.distanceKm() * run.daysByMonth().get(month);
            }
        }
        return km;
    }
}
