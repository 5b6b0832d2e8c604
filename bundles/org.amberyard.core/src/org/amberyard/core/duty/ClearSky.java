package org.amberyard.core.duty;

/**
 * Sun on level ground under a clear sky: global irradiance {@code 1098 · cos z · exp(−0.059 / cos z)} W/m² with the sun's
 * zenith angle z (B. Haurwitz, "Insolation in relation to cloudiness and cloud density", Journal of Meteorology 2, 1945, from
 * memory). The declination of the sun follows Cooper (Solar Energy 12, 1969, from memory); clock time is taken as solar time.
 */
public final class ClearSky {
    private static final double DAYS_PER_MONTH = 30.4375;

    private ClearSky() {
    }

    /**
     * Irradiance at each full hour, W/m².
     *
     * @param latitudeDeg latitude, degrees, north positive
     * @param month month, 0 for January; its middle is taken
     * @param share sun that reaches the ground over that of a clear sky
     */
    public static double[] hourlyWPerM2(double latitudeDeg, int month, double share) {
        double[] sun = new double[WeatherDay.HOURS];
        for (int hour = 0; hour < WeatherDay.HOURS; hour++) {
            sun[hour] = share * irradianceWPerM2(cosineOfZenith(latitudeDeg, month, hour));
        }
        return sun;
    }

    /** Irradiance for the cosine of the zenith angle, W/m²; none when the sun is below the horizon. */
    public static double irradianceWPerM2(double cosineOfZenith) {
        return cosineOfZenith > 0 ? 1098 * cosineOfZenith * Math.exp(-0.059 / cosineOfZenith) : 0;
    }

    private static double cosineOfZenith(double latitudeDeg, int month, double hour) {
        double dayOfYear = (month + 0.5) * DAYS_PER_MONTH;
        double declination = Math.toRadians(23.45) * Math.sin(2 * Math.PI * (284 + dayOfYear) / 365);
        double latitude = Math.toRadians(latitudeDeg);
        double hourAngle = Math.toRadians(15 * (hour - 12));
        return Math.sin(latitude) * Math.sin(declination)
                + Math.cos(latitude) * Math.cos(declination) * Math.cos(hourAngle);
    }
}
