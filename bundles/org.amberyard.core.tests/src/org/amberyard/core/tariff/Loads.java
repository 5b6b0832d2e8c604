package org.amberyard.core.tariff;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** Metered loads of tests. */
final class Loads {
    private static final int QUARTERS = 96;
    private static final int MONTHS = 12;

    private Loads() {
    }

    /** The same demand in each quarter of an hour. */
    static double[] flat(double kw) {
        double[] load = new double[QUARTERS];
        Arrays.fill(load, kw);
        return load;
    }

    /** The same demand in each quarter of an hour but one. */
    static double[] flatWithPeak(double kw, int hour, int minute, double peakKw) {
        double[] load = flat(kw);
        load[4 * hour + minute / 15] = peakKw;
        return load;
    }

    /** A month of weekdays and Saturdays. */
    static MeterMonth month(int month, double[] weekdayKw, double[] saturdayKw) {
        return new MeterMonth(month, List.of(new LoadDay("school day", DayClass.WEEKDAY, 22, weekdayKw),
                new LoadDay("free day", DayClass.SATURDAY, 9, saturdayKw)));
    }

    /** Months from January on with flat loads. */
    static List<MeterMonth> year(double... kw) {
        return IntStream.range(0, MONTHS).mapToObj(m -> month(m, flat(kw[m % kw.length]), flat(0))).toList();
    }
}
