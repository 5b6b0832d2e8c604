package org.amberyard.exchange.weather;

/**
 * Where a weather file was measured.
 *
 * @param city name of the place
 * @param region state, province or region; may be blank
 * @param station number of the station; may be blank
 * @param latitudeDeg latitude, north positive, degrees
 * @param elevationM height above sea level, m
 */
record EpwLocation(String city, String region, String station, double latitudeDeg, double elevationM) {

    /** The place in words. */
    String words() {
        return city + (region.isBlank() || region.equals("-") ? "" : ", " + region) + (station.isBlank() ? "" : " (" + station + ")");
    }
}
