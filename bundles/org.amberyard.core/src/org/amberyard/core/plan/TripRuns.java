package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.amberyard.core.duty.Climate;
import org.amberyard.core.duty.RunInput;

/**
 * A trip as two runs, out and back, of half its distance each. Its hours are not all driving: the bus drives at a mean road
 * speed of 65 km/h, or as much faster as the hours demand, and stands away from the yard, without a port, in between. The
 * road is level and every seat that is needed is taken (common practice where no more is known of a trip, no source).
 */
final class TripRuns {
    private static final double ROAD_KMH = 65;
    private static final double DWELL_S = 120;

    private TripRuns() {
    }

    /** The way out and the way back. */
    static List<RunInput> of(TripInput trip) {
        double roadKmh = Math.max(ROAD_KMH, trip.km() / trip.hours());
        double wayMin = trip.km() / 2 / roadKmh * 60 + trip.stopsEachWay() * DWELL_S / 60;
        return List.of(run(trip, "out", trip.departureMin(), wayMin, roadKmh, false),
                run(trip, "back", trip.returnMin() - wayMin, wayMin, roadKmh, true));
    }

    private static RunInput run(TripInput trip, String way, double departureMin, double durationMin, double roadKmh,
            boolean yardAfter) {
        List<Integer> days = new ArrayList<>(Collections.nCopies(Climate.MONTHS, 0));
        days.set(trip.month(), 1);
        return new RunInput(trip.name() + " " + way, departureMin, durationMin, trip.km() / 2, trip.stopsEachWay(), DWELL_S,
                trip.seats(), roadKmh, 0, yardAfter, trip.day() == ServiceDay.EXTENDED_YEAR, days, Optional.empty());
    }
}
