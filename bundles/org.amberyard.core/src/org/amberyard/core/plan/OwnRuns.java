package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.amberyard.core.duty.DayBlock;
import org.amberyard.core.duty.RunInput;

/**
 * The runs of a bus on its route around a trip.
 *
 * @param today when the bus is on a run on the day of the trip
 * @param nextDay what the routes do on the day after, as far as it matters to the bus
 * @param nextMin first departure of the next day, minutes after midnight of the trip's day; empty where the bus then has none
 */
record OwnRuns(List<Busy> today, ServiceDay nextDay, OptionalDouble nextMin) {

    /** From departure to the end of a run, minutes after midnight. */
    record Busy(double fromMin, double toMin) {
    }

    /** No run at all. */
    static final OwnRuns NONE = new OwnRuns(List.of(), ServiceDay.OTHER, OptionalDouble.empty());

    OwnRuns {
        today = List.copyOf(today);
    }

    /**
     * Runs around a trip. The day after counts as one of the same kind; after a day without routes it counts as a school day,
     * else as a day of the extended-year programme, where the route is driven on such days of that month.
     *
     * @param runs runs of the route
     * @param drivenMin what they take as driven, min
     */
    static OwnRuns of(TripInput trip, List<RunInput> runs, List<Double> drivenMin) {
        List<Busy> today = new ArrayList<>();
        for (int run = 0; run < runs.size(); run++) {
            double fromMin = runs.get(run).departureMin();
            if (isDriven(runs.get(run), trip.month(), trip.day())) {
                today.add(new Busy(fromMin, fromMin + drivenMin.get(run)));
            }
        }
        ServiceDay next = nextDay(trip, runs);
        return new OwnRuns(today, next, runs.stream().filter(r -> isDriven(r, trip.month(), next))
                .mapToDouble(r -> r.departureMin() + DayBlock.DAY_MIN).min());
    }

    private static ServiceDay nextDay(TripInput trip, List<RunInput> runs) {
        return trip.day() != ServiceDay.OTHER ? trip.day()
                : Stream.of(ServiceDay.SCHOOL, ServiceDay.EXTENDED_YEAR)
                        .filter(day -> runs.stream().anyMatch(r -> isDriven(r, trip.month(), day))).findFirst()
                        .orElse(ServiceDay.OTHER);
    }

    private static boolean isDriven(RunInput run, int month, ServiceDay day) {
        return day != ServiceDay.OTHER && run.extendedYear() == (day == ServiceDay.EXTENDED_YEAR)
                && run.daysByMonth().get(month) > 0;
    }

    /** What in the runs keeps the bus from a trip, if anything does. */
    Optional<TripVerdict> conflict(TripInput trip) {
        if (today.stream().anyMatch(b -> b.fromMin() <= trip.departureMin() && trip.departureMin() < b.toMin())) {
            return Optional.of(TripVerdict.ON_OWN_RUN);
        }
        boolean late = today.stream().anyMatch(b -> trip.departureMin() < b.fromMin() && b.fromMin() < trip.returnMin())
                || nextMin.isPresent() && nextMin.getAsDouble() < trip.returnMin();
        return late ? Optional.of(TripVerdict.BACK_TOO_LATE) : Optional.empty();
    }
}
