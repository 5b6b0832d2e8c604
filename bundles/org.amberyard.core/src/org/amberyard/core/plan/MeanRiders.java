package org.amberyard.core.plan;

import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.concurrent.ConcurrentHashMap;
import org.amberyard.core.duty.DutyInput;
import org.amberyard.core.duty.RouteInput;
import org.amberyard.core.duty.RunInput;

/** Mass of the riders on board, averaged over the distance of a year. */
final class MeanRiders {
    private final DutyInput duty;
    private final Map<Key, Double> known = new ConcurrentHashMap<>();

    private record Key(OptionalInt route, String bodyType) {
    }

    MeanRiders(DutyInput duty) {
        this.duty = duty;
    }

    /** Mass on a route, kg; a bus without one carries what all routes of its body type do, and none where there is none. */
    double kg(OptionalInt route, String bodyType) {
        return known.computeIfAbsent(new Key(route, bodyType), key -> mean(key.route(), key.bodyType()));
    }

    private double mean(OptionalInt route, String bodyType) {
        List<RouteInput> routes = route.isPresent() ? List.of(duty.routes().get(route.getAsInt()))
                : duty.routes().stream().filter(r -> r.bodyType().equals(bodyType)).toList();
        double km = 0;
        double riderKm = 0;
        for (RouteInput driven : routes) {
            for (RunInput run : driven.runs()) {
                double runKm = run.distanceKm() * run.daysByMonth().stream().mapToInt(Integer::intValue).sum();
                km += runKm;
                riderKm += runKm * run.meanRiders();
            }
        }
        return km > 0 ? duty.riderMassKg() * riderKm / km : 0;
    }
}
