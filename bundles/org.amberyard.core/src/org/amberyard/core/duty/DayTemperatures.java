package org.amberyard.core.duty;

/**
 * Outside air over one day: lowest at six in the morning, highest at three in the afternoon, half cosine waves between
 * (common practice for hourly profiles from daily extremes, no source).
 *
 * @param lowC daily minimum, °C
 * @param highC daily maximum, °C
 */
public record DayTemperatures(double lowC, double highC) {
    private static final double COLDEST_HOUR = 6;
    private static final double WARMEST_HOUR = 15;
    private static final double DAY_HOURS = 24;

    /** Temperature at a clock hour, °C. */
    public double atHour(double hour) {
        double sinceColdest = ((hour - COLDEST_HOUR) % DAY_HOURS + DAY_HOURS) % DAY_HOURS;
        double rising = WARMEST_HOUR - COLDEST_HOUR;
        double phase = sinceColdest <= rising ? sinceColdest / rising
                : 1 - (sinceColdest - rising) / (DAY_HOURS - rising);
        return lowC + (highC - lowC) * (1 - Math.cos(Math.PI * phase)) / 2;
    }
}
