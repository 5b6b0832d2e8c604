package org.amberyard.study;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import org.amberyard.core.duty.RouteInput;
import org.amberyard.core.plan.ServiceDay;
import org.amberyard.core.plan.TripInput;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.routes.Trip;
import org.amberyard.model.study.Study;

/**
 * Compiles trips. A date from Monday to Friday is a school day in a month that has school days, else a day of the
 * extended-year programme in a month that has such days; no finer calendar is known.
 */
final class TripCompiler {
    private static final int STOPS_EACH_WAY = 1;

    private final Study study;
    private final List<RouteInput> routes;
    private final Places<Bus> buses;

    /** @param routes the compiled routes */
    TripCompiler(Study study, List<RouteInput> routes) {
        this.study = study;
        this.routes = routes;
        this.buses = new Places<>(study.getBuses());
    }

    List<TripInput> trips() {
        return study.getTrips().stream().map(this::trip).toList();
    }

    private TripInput trip(Trip trip) {
        LocalDate date = LocalDate.parse(trip.getDate());
        String kind = trip.getKind() == null ? "" : trip.getKind();
        return new TripInput(trip.getName(), kind, date, day(date), trip.getDepartureMin(), trip.getDurationH(),
                trip.getRoundTripKm(), trip.getBodyType().getLiteral(), trip.getSeats(), STOPS_EACH_WAY,
                buses.ofOptional(trip.getBus()));
    }

    private ServiceDay day(LocalDate date) {
        int month = date.getMonthValue() - 1;
        boolean weekend = date.getDayOfWeek() == DayOfWeek.SATURDAY || date.getDayOfWeek() == DayOfWeek.SUNDAY;
        if (!weekend && driven(month, false)) {
            return ServiceDay.SCHOOL;
        }
        return !weekend && driven(month, true) ? ServiceDay.EXTENDED_YEAR : ServiceDay.OTHER;
    }

    private boolean driven(int month, boolean extendedYear) {
        return routes.stream().flatMap(r -> r.runs().stream())
                .anyMatch(r -> r.extendedYear() == extendedYear && r.daysByMonth().get(month) > 0);
    }
}
