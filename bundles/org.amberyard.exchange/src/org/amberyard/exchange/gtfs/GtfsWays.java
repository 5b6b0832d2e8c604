package org.amberyard.exchange.gtfs;

import java.util.ArrayList;
import java.util.List;

/**
 * Ways without riders from the end of a trip to the start of the next one of its block, which a schedule does not tell: straight lines times a
 * factor for roads, at a speed for such ways. Both are common practice, no source, and are marked as assumed.
 */
final class GtfsWays {
    /** Roads are that much longer than straight lines. */
    static final double DETOUR = 1.3;
    /** Mean speed, km/h. */
    static final double SPEED_KMH = 40;
    /** Stops on both sides of a road have ids of their own; a bus that turns there drives no way. */
    static final double NEAR_KM = 0.3;
    private static final double MOST_KMH = 100;
    private static final int MINUTE_S = 60;
    private static final double HOUR_S = 3600;

    private final GtfsDistances distances;
    private int ways;
    private double km;
    private int tooShort;

    GtfsWays(GtfsDistances distances) {
        this.distances = distances;
    }

    /**
     * Runs of the trips of a block with the ways between them.
     *
     * @param trips trips in the order of the day
     * @param runs their runs
     */
    List<GtfsRun> with(List<GtfsTrip> trips, List<GtfsRun> runs) {
        List<GtfsRun> all = new ArrayList<>();
        for (int i = 0; i < runs.size(); i++) {
            if (i > 0) {
                add(trips.get(i - 1), trips.get(i), runs.get(i), all);
            }
            all.add(runs.get(i));
        }
        return all;
    }

    /** A way begins on the full minute after the trip; where the stand is too short for it, it is told and left out. */
    private void add(GtfsTrip done, GtfsTrip next, GtfsRun run, List<GtfsRun> all) {
        double straightKm = distances.betweenKm(done, next);
        if (straightKm <= NEAR_KM) {
            return;
        }
        double wayKm = straightKm * DETOUR;
        int startS = (done.endS() + MINUTE_S - 1) / MINUTE_S * MINUTE_S;
        int freeS = next.startS() / MINUTE_S * MINUTE_S - startS;
        if (freeS < MINUTE_S || wayKm / (freeS / HOUR_S) > MOST_KMH) {
            tooShort++;
            return;
        }
        int takesS = (int) Math.min(freeS, Math.max(MINUTE_S, Math.round(wayKm / SPEED_KMH * HOUR_S)));
        all.add(new GtfsRun("way to " + run.name(), startS, startS + takesS, wayKm, 1, 0, done.id(), true));
        ways++;
        km += wayKm;
    }

    /** Ways that were added. */
    int ways() {
        return ways;
    }

    /** Their length, km. */
    double km() {
        return km;
    }

    /** Ways for which a bus would have to drive faster than any does. */
    int tooShort() {
        return tooShort;
    }
}
