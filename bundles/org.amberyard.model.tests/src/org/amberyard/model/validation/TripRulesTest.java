package org.amberyard.model.validation;

import org.amberyard.model.SmallStudy;
import org.amberyard.model.common.BodyType;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.fleet.FleetFactory;
import org.amberyard.model.routes.Trip;
import org.junit.jupiter.api.Test;

class TripRulesTest {
    private final SmallStudy small = new SmallStudy();
    private final Trip trip = small.addTrip("T01", "2026-03-31");

    @Test
    void aTripThatIsRightIsLeftAlone() {
        Said.of(small);
    }

    @Test
    void aDateIsADayOfTheCalendar() {
        trip.setDate("2026-02-30");
        Said.of(small, "ERROR: Trip T01: date is “2026-02-30”; it must be a day of the calendar as year, month and day, such as "
                + "2026-03-31.");
        trip.setDate("3/31/2026");
        Said.of(small, "ERROR: Trip T01: date is “3/31/2026”; it must be a day of the calendar as year, month and day, such as "
                + "2026-03-31.");
        trip.setDate(" ");
        Said.of(small, "ERROR: Trip T01: date is missing; enter it.");
    }

    @Test
    void theTripsAreThoseOfOneYear() {
        small.addTrip("T02", "2027-03-30");
        Said.of(small);
        small.addTrip("T03", "2027-03-31");
        Said.of(small, "WARNING: Trip T03: date is 2027-03-31, a year or more after trip T01 of 2026-03-31; the list stands for "
                + "one year, so keep the trips of one.");
    }

    @Test
    void aTripCanBeDrivenInItsTimeAndLeavesSomeOfIt() {
        trip.setDurationH(1);
        Said.of(small, "WARNING: Trip T01: time away is 1 h for 80 km, a mean speed of 80 km/h, so no time is left at the "
                + "destination; check both.");
        trip.setDurationH(0.5);
        Said.of(small, "ERROR: Trip T01: time away is 0.5 h for 80 km, a mean speed of 160 km/h, faster than any school bus; "
                + "correct distance or time.");
        trip.setDurationH(0);
        Said.of(small, "ERROR: Trip T01: time away is 0 h; it must be above 0 h.");
        trip.setDurationH(25);
        Said.of(small, "ERROR: Trip T01: time away is 25 h; it must be at most 24 h.");
    }

    @Test
    void theBusSuitsTheRiders() {
        trip.setBodyType(BodyType.A);
        Said.of(small, "WARNING: Trip T01: its riders need a type A bus but bus B01 is of type C; change one of them.");
    }

    @Test
    void theBusIsOneOfTheFleet() {
        Bus stranger = FleetFactory.eINSTANCE.createBus();
        stranger.setName("B99");
        trip.setBus(stranger);
        Said.of(small, "ERROR: Trip T01: bus is B99, which is not part of this study; choose another.");
    }

    /** A quarter of the larger of the two is tolerated: 80 km of trips and up to 106.66 km of other distance. */
    @Test
    void theDistanceOfTheTripsIsTheOtherDistanceOfTheBus() {
        small.bus.setOtherKmPerYear(106);
        Said.of(small);
        small.bus.setOtherKmPerYear(108);
        Said.of(small, "WARNING: Bus B01: other distance per year is 108 km but its trips come to 80 km; costs go by the former "
                + "alone, so let it cover the trips.");
        small.bus.setOtherKmPerYear(0);
        Said.of(small, "WARNING: Bus B01: other distance per year is 0 km but its trips come to 80 km; costs go by the former "
                + "alone, so let it cover the trips.");
    }

    @Test
    void namesTellTripsApart() {
        small.addTrip("T01", "2026-04-01");
        Said.of(small, "ERROR: Trip T01: T01 appears on rows 1 and 2 of Trips; give each its own name.");
    }
}
