package org.amberyard.core.plan;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class TripCoverPropertyTest {

    private static List<Integer> able(double packKwh, TripInput trip) {
        return TinyTrips.able(TinyTrips.evaluated(TinyTrips.study(packKwh, trip)).tripCovers().get(1));
    }

    private static ServiceDay day(boolean school) {
        return school ? ServiceDay.SCHOOL : ServiceDay.OTHER;
    }

    @Property(tries = 60)
    void aBiggerPackCoversWhatASmallerOneDoes(@ForAll @DoubleRange(min = 60, max = 300) double packKwh,
            @ForAll @DoubleRange(min = 1, max = 2) double larger, @ForAll @DoubleRange(min = 10, max = 300) double km,
            @ForAll @IntRange(min = 300, max = 1200) int departureMin, @ForAll boolean school) {
        TripInput trip = TinyTrips.trip(day(school), departureMin, 6, km);
        List<Integer> few = able(packKwh, trip);
        List<Integer> many = able(packKwh * larger, trip);
        assertTrue(many.containsAll(few), few + " with " + packKwh + " kWh but " + many + " with " + packKwh * larger);
    }

    @Property(tries = 60)
    void whoCanDriveFarCanDriveLess(@ForAll @DoubleRange(min = 60, max = 400) double packKwh,
            @ForAll @DoubleRange(min = 10, max = 350) double km, @ForAll @DoubleRange(min = 0.1, max = 1) double share,
            @ForAll @IntRange(min = 300, max = 1200) int departureMin, @ForAll boolean school) {
        List<Integer> far = able(packKwh, TinyTrips.trip(day(school), departureMin, 6, km));
        List<Integer> near = able(packKwh, TinyTrips.trip(day(school), departureMin, 6, km * share));
        assertTrue(near.containsAll(far), far + " over " + km + " km but " + near + " over " + km * share);
    }
}
