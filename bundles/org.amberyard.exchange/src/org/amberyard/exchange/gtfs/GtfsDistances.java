package org.amberyard.exchange.gtfs;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Lengths of trips: along their shape between the first and the last stop, else by the distances of stop_times.txt, else straight
 * from stop to stop. The unit of those distances is not told by the specification; it is the only one of metres, feet, kilometres
 * and miles by which trips are not shorter than the straight lines, and not twice as long, if there is just one.
 */
final class GtfsDistances {
    private static final List<Double> UNITS_KM = List.of(1.0, 1.609344, 0.001, 0.0003048);
    private static final double LEAST_DETOUR = 0.97;
    private static final double MOST_DETOUR = 2;
    /** A shape that is shorter than the straight lines belongs to another trip. */
    private static final double LEAST_SHAPE_SHARE = 0.9;
    /** Stops stand at the side of the road that the shape is drawn along. */
    private static final double AT_END_KM = 0.2;

    private final GtfsDetails details;
    private final Optional<Double> unitKm;

    GtfsDistances(GtfsDetails details) {
        this.details = details;
        this.unitKm = unitKm(details.trips());
    }

    private Optional<Double> unitKm(List<GtfsTrip> trips) {
        List<GtfsTrip> told = trips.stream().filter(t -> traveled(t).isPresent()).toList();
        double straight = told.stream().mapToDouble(this::straightKm).sum();
        double traveled = told.stream().mapToDouble(t -> traveled(t).orElseThrow()).sum();
        List<Double> possible = UNITS_KM.stream().filter(u -> straight > 0 && traveled * u >= LEAST_DETOUR * straight
                && traveled * u <= MOST_DETOUR * straight).toList();
        return possible.size() == 1 ? Optional.of(possible.get(0)) : Optional.empty();
    }

    /** From the first to the last stop in the unknown unit. */
    private static OptionalDouble traveled(GtfsTrip trip) {
        double length = trip.last().traveled() - trip.first().traveled();
        return length > 0 ? OptionalDouble.of(length) : OptionalDouble.empty();
    }

    GtfsDistance of(GtfsTrip trip) {
        double straight = straightKm(trip);
        OptionalDouble along = alongShapeKm(trip).stream().filter(km -> km >= LEAST_SHAPE_SHARE * straight && km > 0).findFirst();
        if (along.isPresent()) {
            return new GtfsDistance(along.getAsDouble(), GtfsDistance.Way.SHAPE);
        }
        OptionalDouble traveled = traveled(trip);
        return traveled.isPresent() && unitKm.isPresent()
                ? new GtfsDistance(traveled.getAsDouble() * unitKm.get(), GtfsDistance.Way.TRAVELED)
                : new GtfsDistance(straight, GtfsDistance.Way.STRAIGHT);
    }

    private double straightKm(GtfsTrip trip) {
        return IntStream.range(1, trip.stops().size())
                .mapToDouble(i -> details.place(trip.stops().get(i - 1)).km(details.place(trip.stops().get(i)))).sum();
    }

    private OptionalDouble alongShapeKm(GtfsTrip trip) {
        List<GtfsPlace> shape = details.shape(trip);
        if (shape.size() < 2) {
            return OptionalDouble.empty();
        }
        double[] km = new double[shape.size()];
        for (int i = 1; i < km.length; i++) {
            km[i] = km[i - 1] + shape.get(i - 1).km(shape.get(i));
        }
        boolean told = traveled(trip).isPresent() && shape.stream().noneMatch(p -> Double.isNaN(p.traveled()));
        return OptionalDouble.of(told ? at(shape, km, trip.last().traveled()) - at(shape, km, trip.first().traveled())
                : betweenCornersKm(trip, shape, km));
    }

    /** Length up to a distance in the unit of the shape. */
    private static double at(List<GtfsPlace> shape, double[] km, double traveled) {
        int after = IntStream.range(0, km.length).filter(i -> shape.get(i).traveled() >= traveled).findFirst().orElse(km.length - 1);
        if (after == 0) {
            return 0;
        }
        double from = shape.get(after - 1).traveled();
        double span = shape.get(after).traveled() - from;
        double share = span > 0 ? Math.min(1, Math.max(0, (traveled - from) / span)) : 1;
        return km[after - 1] + share * (km[after] - km[after - 1]);
    }

    /** A trip may follow a part of a shape that longer trips follow too. */
    private double betweenCornersKm(GtfsTrip trip, List<GtfsPlace> shape, double[] km) {
        GtfsPlace first = details.place(trip.first());
        GtfsPlace last = details.place(trip.last());
        int from = first.km(shape.get(0)) <= AT_END_KM ? 0 : nearest(shape, 0, shape.size() - 1, first);
        int to = last.km(shape.get(shape.size() - 1)) <= AT_END_KM ? shape.size() - 1 : nearest(shape, from + 1, shape.size(), last);
        return km[to] - km[from];
    }

    private static int nearest(List<GtfsPlace> shape, int from, int to, GtfsPlace place) {
        int nearest = from;
        for (int i = from; i < to; i++) {
            if (shape.get(i).km(place) < shape.get(nearest).km(place)) {
                nearest = i;
            }
        }
        return nearest;
    }

    /** Straight distance from the end of a trip to the start of the next, km. */
    double betweenKm(GtfsTrip trip, GtfsTrip next) {
        return details.place(trip.last()).km(details.place(next.first()));
    }

    /** Every way that trips' lengths were found, once, the best first. */
    List<GtfsDistance.Way> ways() {
        return Stream.of(GtfsDistance.Way.values()).filter(w -> details.trips().stream().anyMatch(t -> of(t).way() == w)).toList();
    }
}
