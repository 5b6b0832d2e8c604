package org.amberyard.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.amberyard.core.duty.RunInput;

/** A bus with runs from 6:30 to 7:40 and from 14:20 to 15:30. */
class OwnRunsTest {
    private static final List<RunInput> RUNS = List.of(TinyDistrict.run("AM", 390, 24), TinyDistrict.run("PM", 860, 24));
    private static final List<Double> DRIVEN_MIN = List.of(70.0, 70.0);

    private static Optional<TripVerdict> conflict(ServiceDay day, double departureMin, double returnMin) {
        TripInput trip = TinyTrips.trip(day, departureMin, (returnMin - departureMin) / 60, 50);
        return OwnRuns.of(trip, RUNS, DRIVEN_MIN).conflict(trip);
    }

    @Example
    void aTripFitsBetweenTwoRunsToTheMinute() {
        assertEquals(Optional.empty(), conflict(ServiceDay.SCHOOL, 460, 860));
        assertEquals(Optional.of(TripVerdict.ON_OWN_RUN), conflict(ServiceDay.SCHOOL, 459, 860));
        assertEquals(Optional.of(TripVerdict.BACK_TOO_LATE), conflict(ServiceDay.SCHOOL, 460, 861));
        assertEquals(Optional.of(TripVerdict.BACK_TOO_LATE), conflict(ServiceDay.SCHOOL, 300, 391));
        assertEquals(Optional.of(TripVerdict.ON_OWN_RUN), conflict(ServiceDay.SCHOOL, 390, 400));
    }

    @Example
    void aRunThatTakesLongerThanScheduledKeepsTheBusLonger() {
        TripInput trip = TinyTrips.trip(ServiceDay.SCHOOL, 460, 1, 50);
        assertEquals(Optional.of(TripVerdict.ON_OWN_RUN), OwnRuns.of(trip, RUNS, List.of(75.0, 70.0)).conflict(trip));
    }

    @Example
    void theBusIsBackForTheNextMorning() {
        assertEquals(Optional.empty(), conflict(ServiceDay.SCHOOL, 930, 1440 + 390));
        assertEquals(Optional.of(TripVerdict.BACK_TOO_LATE), conflict(ServiceDay.SCHOOL, 930, 1440 + 391));
        assertEquals(Optional.of(TripVerdict.BACK_TOO_LATE), conflict(ServiceDay.OTHER, 930, 1440 + 391));
    }

    @Example
    void onADayWithoutRoutesTheBusIsFree() {
        assertEquals(Optional.empty(), conflict(ServiceDay.OTHER, 390, 900));
        assertEquals(Optional.empty(), conflict(ServiceDay.EXTENDED_YEAR, 390, 900));
    }

    @Example
    void theNextDayIsOneOfTheSameKindElseASchoolDay() {
        TripInput trip = TinyTrips.trip(ServiceDay.OTHER, 600, 2, 50);
        assertEquals(ServiceDay.SCHOOL, OwnRuns.of(trip, RUNS, DRIVEN_MIN).nextDay());
        assertEquals(OptionalDouble.of(1440 + 390), OwnRuns.of(trip, RUNS, DRIVEN_MIN).nextMin());
        TripInput summer = TinyTrips.trip(ServiceDay.EXTENDED_YEAR, 600, 2, 50);
        assertEquals(OptionalDouble.empty(), OwnRuns.of(summer, RUNS, DRIVEN_MIN).nextMin());
    }

    @Property
    void whatLeavesAfterTheLastRunMeetsNoRunOfTheDay(@ForAll @DoubleRange(min = 930, max = 1439) double departureMin,
            @ForAll @DoubleRange(min = 0.1, max = 6) double hours) {
        assertEquals(Optional.empty(), conflict(ServiceDay.SCHOOL, departureMin, departureMin + 60 * hours));
    }

    @Property
    void aTripThatFitsStillFitsWhenItIsShorter(@ForAll @DoubleRange(max = 1439) double departureMin,
            @ForAll @DoubleRange(min = 0.5, max = 20) double hours, @ForAll @DoubleRange(min = 0.1, max = 1) double share) {
        boolean fits = conflict(ServiceDay.SCHOOL, departureMin, departureMin + 60 * hours).isEmpty();
        boolean shorterFits = conflict(ServiceDay.SCHOOL, departureMin, departureMin + 60 * hours * share).isEmpty();
        assertEquals(true, shorterFits || !fits);
    }
}
