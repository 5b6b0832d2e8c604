package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.amberyard.core.duty.DayBlock;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.duty.EnergyModel;
import org.amberyard.core.duty.RouteDuty;
import org.amberyard.core.duty.RouteInput;
import org.amberyard.core.duty.RunInput;
import org.amberyard.core.duty.VehicleSpec;

/**
 * Days of electric types with a trip among the runs of a route, on the coldest operated day of the trip's month. Plans and
 * years ask for the same days, so each is driven once.
 */
final class TripDrives {
    private final StudyInput study;
    private final DutyTable duty;
    private final Map<Key, DayBlock> driven = new HashMap<>();
    private final Map<Integer, List<Double>> minutes = new HashMap<>();

    TripDrives(StudyInput study, DutyTable duty) {
        this.study = study;
        this.duty = duty;
    }

    private record Key(OptionalInt route, int type, TripInput trip) {
    }

    /** The bus's own runs around a trip; none without a route. */
    OwnRuns own(OptionalInt route, TripInput trip) {
        return route.isEmpty() ? OwnRuns.NONE : OwnRuns.of(trip, study.duty().routes().get(route.getAsInt()).runs(),
                minutes.computeIfAbsent(route.getAsInt(), duty::drivenMin));
    }

    /** The day of a trip. */
    DayBlock day(OptionalInt route, int type, TripInput trip) {
        return driven.computeIfAbsent(new Key(route, type, trip), this::drive);
    }

    private DayBlock drive(Key key) {
        TripInput trip = key.trip();
        VehicleSpec spec = study.types().get(key.type()).spec();
        double factor = key.route().isPresent() ? duty.calibration(key.route().getAsInt()).factor(spec) : 1;
        return RouteDuty.of(study.duty(), route(key.route(), trip), spec, factor).block(trip.month(),
                trip.day() == ServiceDay.EXTENDED_YEAR, study.duty().climate().months().get(trip.month()).coldest(),
                study.duty().habit());
    }

    private RouteInput route(OptionalInt route, TripInput trip) {
        Optional<RouteInput> own = route.isPresent() ? Optional.of(study.duty().routes().get(route.getAsInt())) : Optional.empty();
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
                .map(d -> d.block(study.middayCharging())).findFirst());
    }
}
