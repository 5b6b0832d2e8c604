package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.amberyard.core.duty.DayBlock;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.duty.EnergyModel;
import org.amberyard.core.duty.RouteDuty;
import org.amberyard.core.duty.RouteInput;
import org.amberyard.core.duty.RunInput;
import org.amberyard.core.duty.VehicleSpec;

/**
 * Days of electric types with a trip among the runs of a route, on the coldest operated day of the trip's month. Plans, years
 * and later evaluations ask for the same days, so each is driven once and kept. Safe for use from several threads.
 */
public final class TripDrives {
    private final DutyTable duty;
    private final Map<Key, DayBlock> driven = new ConcurrentHashMap<>();

    /** Nothing driven yet, on the routes of a duty table. */
    public TripDrives(DutyTable duty) {
        this.duty = duty;
    }

    /** The duty table that the routes are taken from. */
    public DutyTable duty() {
        return duty;
    }

    /** Forgets the days of all other trips. */
    void keepOnly(List<TripInput> trips) {
        Set<TripInput> kept = new HashSet<>(trips);
        driven.keySet().removeIf(key -> !kept.contains(key.trip()));
    }

    private record Key(OptionalInt route, int type, TripInput trip) {
    }

    /** The bus's own runs around a trip; none without a route. */
    OwnRuns own(OptionalInt route, TripInput trip) {
        return route.isEmpty() ? OwnRuns.NONE : OwnRuns.of(trip, duty.input().routes().get(route.getAsInt()).runs(),
                duty.drivenMin(route.getAsInt()));
    }

    /** The day of a trip. */
    DayBlock day(OptionalInt route, int type, TripInput trip) {
        return driven.computeIfAbsent(new Key(route, type, trip), this::drive);
    }

    private DayBlock drive(Key key) {
        TripInput trip = key.trip();
        VehicleSpec spec = duty.input().vehicles().get(key.type());
        double factor = key.route().isPresent() ? duty.calibration(key.route().getAsInt()).factor(spec) : 1;
        return RouteDuty.of(duty.input(), route(key.route(), trip), spec, factor).block(trip.month(),
                trip.day() == ServiceDay.EXTENDED_YEAR, duty.input().climate().months().get(trip.month()).coldest(),
                duty.input().habit());
    }

    private RouteInput route(OptionalInt route, TripInput trip) {
        Optional<RouteInput> own = route.isPresent() ? Optional.of(duty.input().routes().get(route.getAsInt())) : Optional.empty();
        List<RunInput> runs = new ArrayList<>();
        own.filter(r -> trip.day() != ServiceDay.OTHER).ifPresent(r -> runs.addAll(r.runs()));
        int before = (int) runs.stream().filter(r -> r.departureMin() < trip.departureMin()).count();
        runs.addAll(before, TripRuns.of(trip));
        return new RouteInput(trip.name(), trip.bodyType(), runs, own.map(RouteInput::energyModel).orElse(EnergyModel.PHYSICS));
    }

    /** The bus's own next day, without the trip; empty where it has none. */
    Optional<DayBlock> nextDay(OptionalInt route, int type, int month, ServiceDay day) {
        return route.isEmpty() ? Optional.empty() : duty.use(route.getAsInt(), type).flatMap(use -> use.designDays().stream()
                .filter(d -> d.cold() && d.month() == month && day != ServiceDay.OTHER
                        && d.extendedYear() == (day == ServiceDay.EXTENDED_YEAR))
                .map(d -> d.block(duty.input().habit().midday())).findFirst());
    }
}
