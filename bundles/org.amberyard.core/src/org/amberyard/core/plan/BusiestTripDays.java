package org.amberyard.core.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.yard.TripDay;

/**
 * The service day of each month on which the buses of a yard drive most kilometres of trips: it is on such evenings that buses
 * come home late and charge together. A trip is driven by the bus that it is assigned to. One that its runs do not leave time
 * for, and one on a day without routes, stays in the other driving of the bus.
 */
final class BusiestTripDays {
    private final DutyTable duty;
    private final List<BusInput> places;
    private final Map<TripDay.Month, List<TripInput>> busiest;

    BusiestTripDays(StudyInput study, DutyTable duty) {
        this.duty = duty;
        this.places = study.buses();
        this.busiest = study.trips().stream().filter(this::driven)
                .collect(Collectors.groupingBy(t -> new TripDay.Month(t.month(), t.day() == ServiceDay.EXTENDED_YEAR),
                        () -> new TreeMap<>(Comparator.comparing(TripDay.Month::month).thenComparing(TripDay.Month::extendedYear)),
                        Collectors.collectingAndThen(Collectors.toList(),
                                BusiestTripDays::busiestDay)));
    }

    private boolean driven(TripInput trip) {
        if (trip.assigned().isEmpty() || trip.day() == ServiceDay.OTHER) {
            return false;
        }
        return new TripDrives(duty).own(places.get(trip.assigned().getAsInt()).route(), trip).conflict(trip).isEmpty();
    }

    private static List<TripInput> busiestDay(List<TripInput> ofMonth) {
        Map<LocalDate, List<TripInput>> days = ofMonth.stream()
                .collect(Collectors.groupingBy(TripInput::date, TreeMap::new, Collectors.toList()));
        return days.values().stream().reduce((one, other) -> km(other) > km(one) ? other : one).orElseThrow();
    }

    private static double km(List<TripInput> trips) {
        return trips.stream().mapToDouble(TripInput::km).sum();
    }

    /** Trips of a place when a bus of an electric type stands there: the last of the day, with the energy of all of them. */
    List<TripDay> of(int place, int type) {
        List<TripDay> days = new ArrayList<>();
        busiest.forEach((month, trips) -> {
            List<TripInput> own = trips.stream().filter(t -> t.assigned().getAsInt() == place).toList();
            Optional<TripInput> last = own.stream().max(Comparator.comparingDouble(TripInput::returnMin));
            last.ifPresent(t -> days.add(new TripDay(month.month(), month.extendedYear(), firstMin(own), t.returnMin(),
                    duty.perKm(type).batteryKwh() * km(own))));
        });
        return days;
    }

    private static double firstMin(List<TripInput> own) {
        return own.stream().mapToDouble(TripInput::departureMin).min().orElseThrow();
    }
}
