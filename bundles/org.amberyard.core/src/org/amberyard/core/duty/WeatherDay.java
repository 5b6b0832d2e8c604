package org.amberyard.core.duty;

import java.util.Arrays;
import org.amberyard.core.math.Checks;

/**
 * Outside air and sun of one day by clock hour; between two hours the values change evenly, and the day follows itself.
 *
 * <p>Hourly arrays of measured years can be given directly; where only the day's extremes are known,
 * {@link #ofExtremes} makes the profile.
 */
public final class WeatherDay {
    /** Hours in a day. */
    public static final int HOURS = 24;

    private static final double COLDEST_HOUR = 6;
    private static final double WARMEST_HOUR = 15;

    private final double[] airC;
    private final double[] sunWPerM2;

    /**
     * @param airC outside air at each full hour from midnight, °C, 24 values
     * @param sunWPerM2 sun on level ground at each full hour, W/m², 24 values, not negative
     * @throws IllegalArgumentException when there are not 24 values of each
     */
    public WeatherDay(double[] airC, double[] sunWPerM2) {
        if (airC.length != HOURS || sunWPerM2.length != HOURS) {
            throw new IllegalArgumentException("A day needs 24 hourly values of air and of sun but has " + airC.length
                    + " and " + sunWPerM2.length);
        }
        Arrays.stream(sunWPerM2).forEach(sun -> Checks.notNegative("Sun (W/m²)", sun));
        this.airC = airC.clone();
        this.sunWPerM2 = sunWPerM2.clone();
    }

    /**
     * A day from its extremes: lowest at six in the morning, highest at three in the afternoon, half cosine waves between
     * (common practice for hourly profiles from daily extremes, no source).
     *
     * @param lowC daily minimum, °C
     * @param highC daily maximum, °C
     * @param sunWPerM2 sun at each full hour, W/m²
     */
    public static WeatherDay ofExtremes(double lowC, double highC, double[] sunWPerM2) {
        double[] air = new double[HOURS];
        for (int hour = 0; hour < HOURS; hour++) {
            air[hour] = lowC + (highC - lowC) * riseShare(hour);
        }
        return new WeatherDay(air, sunWPerM2);
    }

    /** A day of one temperature without sun. */
    public static WeatherDay steady(double airC) {
        double[] air = new double[HOURS];
        Arrays.fill(air, airC);
        return new WeatherDay(air, new double[HOURS]);
    }

    private static double riseShare(int hour) {
        double sinceColdest = (hour - COLDEST_HOUR + HOURS) % HOURS;
        double rising = WARMEST_HOUR - COLDEST_HOUR;
        double phase = sinceColdest <= rising ? sinceColdest / rising : 1 - (sinceColdest - rising) / (HOURS - rising);
        return (1 - Math.cos(Math.PI * phase)) / 2;
    }

    /** A day between this one, at share 0, and another, at share 1. */
    public WeatherDay towards(WeatherDay other, double share) {
        double[] air = new double[HOURS];
        double[] sun = new double[HOURS];
        for (int hour = 0; hour < HOURS; hour++) {
            air[hour] = airC[hour] + share * (other.airC[hour] - airC[hour]);
            sun[hour] = sunWPerM2[hour] + share * (other.sunWPerM2[hour] - sunWPerM2[hour]);
        }
        return new WeatherDay(air, sun);
    }

    /** Outside air at a time, °C. */
    public double airC(double minute) {
        return at(airC, minute);
    }

    /** Sun on level ground at a time, W/m². */
    public double sunWPerM2(double minute) {
        return at(sunWPerM2, minute);
    }

    /** Mean outside air of the day, °C. */
    public double meanAirC() {
        return Arrays.stream(airC).sum() / HOURS;
    }

    private static double at(double[] hourly, double minute) {
        double hour = (minute / 60 % HOURS + HOURS) % HOURS;
        int before = (int) hour;
        double share = hour - before;
        return hourly[before % HOURS] * (1 - share) + hourly[(before + 1) % HOURS] * share;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof WeatherDay that && Arrays.equals(airC, that.airC)
                && Arrays.equals(sunWPerM2, that.sunWPerM2);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(airC) + Arrays.hashCode(sunWPerM2);
    }
}
