package org.amberyard.exchange.gtfs;

import org.amberyard.core.trace.GreatCircle;

/**
 * A point on earth: a stop, or a corner of a shape.
 *
 * @param latitudeDeg latitude, degrees
 * @param longitudeDeg longitude, degrees
 * @param sequence place in its shape; 0 for a stop
 * @param traveled distance along its shape in a unit that the schedule does not say; not a number where it is not told
 */
record GtfsPlace(double latitudeDeg, double longitudeDeg, int sequence, double traveled) {
    private static final double M_PER_KM = 1000;

    static GtfsPlace of(GtfsRow row, String latitude, String longitude, int sequence, double traveled) {
        return new GtfsPlace(row.decimal(latitude, -90, 90), row.decimal(longitude, -180, 180), sequence, traveled);
    }

    /** Straight distance to another point, km. */
    double km(GtfsPlace other) {
        return GreatCircle.distanceM(latitudeDeg, longitudeDeg, other.latitudeDeg, other.longitudeDeg) / M_PER_KM;
    }
}
