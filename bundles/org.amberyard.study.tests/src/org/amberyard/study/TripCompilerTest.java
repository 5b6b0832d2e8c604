package org.amberyard.study;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.OptionalInt;
import org.amberyard.core.plan.ServiceDay;
import org.amberyard.core.plan.TripInput;
import org.amberyard.model.routes.Trip;
import org.amberyard.model.study.Study;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** In the example school is on from August to June and the extended-year programme in July. */
class TripCompilerTest {
    private Study study;
    private Trip trip;

    @BeforeEach
    void load() throws Exception {
        study = ExampleStudy.load();
        trip = study.getTrips().get(0);
    }

    private TripInput compiled() {
        return StudyCompiler.compile(study).trips().get(0);
    }

    private ServiceDay dayOf(String date) {
        trip.setDate(date);
        return compiled().day();
    }

    @Test
    void everyFigureReachesTheCore() {
        assertEquals(new TripInput("T001", "athletics away", LocalDate.of(2025, 9, 3), ServiceDay.SCHOOL, 920, 4.3,
                61 * 1.609344, "C", 44, 1, OptionalInt.of(20)), compiled());
        assertEquals(8, compiled().month());
        assertEquals(920 + 258, compiled().returnMin(), 1e-9);
    }

    @Test
    void aTripNeedsNeitherKindNorBus() {
        trip.setKind(null);
        trip.setBus(null);
        assertEquals("", compiled().kind());
        assertEquals(OptionalInt.empty(), compiled().assigned());
    }

    @Test
    void theDayOfTheWeekAndTheMonthSayWhatTheRoutesDo() {
        assertEquals(ServiceDay.SCHOOL, dayOf("2026-03-06"), "a Friday");
        assertEquals(ServiceDay.OTHER, dayOf("2026-03-07"), "a Saturday");
        assertEquals(ServiceDay.OTHER, dayOf("2026-03-08"), "a Sunday");
        assertEquals(ServiceDay.EXTENDED_YEAR, dayOf("2026-07-15"), "a Wednesday in July");
        assertEquals(ServiceDay.OTHER, dayOf("2026-07-18"), "a Saturday in July");
        study.getCalendars().forEach(c -> c.setJulyDays(0));
        assertEquals(ServiceDay.OTHER, dayOf("2026-07-15"), "a Wednesday in holidays");
    }
}
