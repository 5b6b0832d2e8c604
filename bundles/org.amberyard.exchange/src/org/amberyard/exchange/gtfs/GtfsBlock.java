package org.amberyard.exchange.gtfs;

import java.util.List;

/**
 * The work of one vehicle on a kind of days.
 *
 * @param id block_id of the schedule
 * @param routes names of the routes that its trips belong to
 * @param trips number of its trips
 */
public record GtfsBlock(String id, List<String> routes, int trips) {

    public GtfsBlock {
        routes = List.copyOf(routes);
    }

    /** The block in words. */
    public String words() {
        return id + ": " + (routes.size() == 1 ? "route " : "routes ") + String.join(", ", routes) + ", " + trips
                + (trips == 1 ? " trip" : " trips");
    }
}
