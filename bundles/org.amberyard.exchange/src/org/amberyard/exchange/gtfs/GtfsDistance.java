package org.amberyard.exchange.gtfs;

/**
 * Length of a trip.
 *
 * @param km length, km
 * @param way how it was found
 */
record GtfsDistance(double km, Way way) {

    /** How the length of a trip is found, the best first. */
    enum Way {
        /** Along the shape. */
        SHAPE("along the shapes of the trips"),
        /** By the distances that stop_times.txt tells, in a unit that the straight lines reveal. */
        TRAVELED("by shape_dist_traveled of stop_times.txt"),
        /** Straight from stop to stop. */
        STRAIGHT("in straight lines from stop to stop, which roads exceed; correct them");

        private final String words;

        Way(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }
}
