package org.amberyard.model.validation;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.routes.RoutesPackage.Literals;
import org.amberyard.model.routes.Trip;
import org.amberyard.model.study.Study;

/** Trips are dated, and all of one year: the list stands for every year of a study. */
final class TripDateRule implements Rule {

    @Override
    public void check(Study study, Findings findings) {
        Map<Trip, LocalDate> dates = new LinkedHashMap<>();
        for (Trip trip : study.getTrips()) {
            if (trip.getDate() != null && !trip.getDate().isBlank()) {
                parsed(trip, findings).ifPresent(date -> dates.put(trip, date));
            }
        }
        dates.entrySet().stream().min(Map.Entry.comparingByValue(Comparator.naturalOrder()))
                .ifPresent(first -> dates.forEach((trip, date) -> checkYear(trip, date, first, findings)));
    }

    private static Optional<LocalDate> parsed(Trip trip, Findings findings) {
        try {
            return Optional.of(LocalDate.parse(trip.getDate()));
        } catch (DateTimeParseException e) {
            findings.error(trip, Literals.TRIP__DATE, "date is “" + trip.getDate()
                    + "”; it must be a day of the calendar as year, month and day, such as 2026-03-31.");
            return Optional.empty();
        }
    }

    private static void checkYear(Trip trip, LocalDate date, Map.Entry<Trip, LocalDate> first, Findings findings) {
        if (!date.isBefore(first.getValue().plusYears(1))) {
            findings.warning(trip, Literals.TRIP__DATE, "date is " + date + ", a year or more after trip "
                    + ElementNames.of(first.getKey()) + " of " + first.getValue()
                    + "; the list stands for one year, so keep the trips of one.");
        }
    }
}
