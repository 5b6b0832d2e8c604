package org.amberyard.core.trace;

/**
 * One point of a logged drive. What the logger did not tell is {@link Double#NaN}.
 *
 * @param timeS time since any fixed moment, s
 * @param latitudeDeg geographic latitude, degrees north, or NaN
 * @param longitudeDeg geographic longitude, degrees east, or NaN
 * @param speedMps speed, m/s, or NaN
 * @param elevationM elevation above any fixed level, m, or NaN
 */
public record TrackPoint(double timeS, double latitudeDeg, double longitudeDeg, double speedMps, double elevationM) {
    private static final double FASTEST_MPS = 100;

    /** @throws IllegalArgumentException when a figure is out of its range; the message names it */
    public TrackPoint {
        require(Double.isFinite(timeS), "Time", timeS, "a finite number of seconds");
        require(Double.isNaN(latitudeDeg) || Math.abs(latitudeDeg) <= 90, "Latitude", latitudeDeg, "-90 to 90 degrees");
        require(Double.isNaN(longitudeDeg) || Math.abs(longitudeDeg) <= 180, "Longitude", longitudeDeg, "-180 to 180 degrees");
        require(Double.isNaN(latitudeDeg) == Double.isNaN(longitudeDeg), "Latitude", latitudeDeg, "given together with the longitude");
        require(Double.isNaN(speedMps) || speedMps >= 0 && speedMps <= FASTEST_MPS, "Speed", speedMps, "0 to 100 m/s");
        require(Double.isNaN(elevationM) || elevationM >= -500 && elevationM <= 9000, "Elevation", elevationM, "-500 to 9,000 m");
    }

    private static void require(boolean holds, String quantity, double value, String allowed) {
        if (!holds) {
            throw new IllegalArgumentException(quantity + " is " + value + " but must be " + allowed);
        }
    }

    /** A point with time and speed alone. */
    public static TrackPoint ofSpeed(double timeS, double speedMps) {
        return new TrackPoint(timeS, Double.NaN, Double.NaN, speedMps, Double.NaN);
    }

    /** True when the point has a place on the earth. */
    public boolean hasPosition() {
        return !Double.isNaN(latitudeDeg);
    }

    /** True when the logger gave a speed. */
    public boolean hasSpeed() {
        return !Double.isNaN(speedMps);
    }

    /** True when the logger gave an elevation. */
    public boolean hasElevation() {
        return !Double.isNaN(elevationM);
    }
}
