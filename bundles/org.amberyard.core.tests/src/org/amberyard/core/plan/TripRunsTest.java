package org.amberyard.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.amberyard.core.duty.RunInput;
import org.junit.jupiter.api.Test;

/** Two minutes of each way pass at its stop; the rest of it is driven at the mean road speed. */
class TripRunsTest {

    @Test
    void halfTheDistanceEachWayWithTheTimeBetweenStandingAway() {
        List<RunInput> runs = TripRuns.of(TinyTrips.trip(ServiceDay.SCHOOL, 600, 5, 130));
        RunInput out = runs.get(0);
        RunInput back = runs.get(1);
        assertEquals(600, out.departureMin());
        assertEquals(60 + 2, out.durationMin(), 1e-12);
        assertEquals(65, out.distanceKm());
        assertEquals(900 - 62, back.departureMin(), 1e-12);
        assertEquals(62, back.durationMin(), 1e-12);
        assertEquals(65, back.distanceKm());
        assertFalse(out.yardAfter(), "no port at the destination");
        assertTrue(back.yardAfter());
    }

    @Test
    void theBusDrivesFasterWhereTheTimeDemandsIt() {
        assertEquals(65, TripRuns.of(TinyTrips.trip(ServiceDay.SCHOOL, 600, 2, 130)).get(0).topSpeedKmh(), 1e-12);
        RunInput out = TripRuns.of(TinyTrips.trip(ServiceDay.SCHOOL, 600, 2, 160)).get(0);
        assertEquals(80, out.topSpeedKmh(), 1e-12);
        assertEquals(60 + 2, out.durationMin(), 1e-12);
    }

    @Test
    void theRunsBelongToTheDayOfTheTrip() {
        RunInput winter = TripRuns.of(TinyTrips.trip(ServiceDay.OTHER, 600, 3, 100)).get(0);
        assertEquals(List.of(1, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0), winter.daysByMonth());
        assertFalse(winter.extendedYear());
        assertTrue(TripRuns.of(TinyTrips.trip(ServiceDay.EXTENDED_YEAR, 600, 3, 100)).get(0).extendedYear());
    }
}
