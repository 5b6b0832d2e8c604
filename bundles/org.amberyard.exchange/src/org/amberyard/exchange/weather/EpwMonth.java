package org.amberyard.exchange.weather;

import java.time.Month;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.amberyard.core.duty.ClearSky;

/**
 * Climate of a month by the days of a weather file.
 *
 * @param month month
 * @param meanLowC mean of the daily lows, °C
 * @param meanHighC mean of the daily highs, °C
 * @param coldest operated day with the lowest low
 * @param hottest operated day with the highest high
 * @param sunShare sun that reached the ground over that of a clear sky, 0 to 1; empty where it was not measured
 */
record EpwMonth(Month month, double meanLowC, double meanHighC, EpwDay coldest, EpwDay hottest, Optional<Double> sunShare) {
    private static final double LEAST_SUN_TOLD = 0.9;

    /** The climate of a month that the file tells. */
    static EpwMonth of(EpwYear year, Month month) {
        List<EpwDay> days = year.days(month);
        List<EpwDay> operated = days.stream().filter(year::isOperated).toList();
        return new EpwMonth(month, days.stream().mapToDouble(EpwDay::lowC).average().orElseThrow(),
                days.stream().mapToDouble(EpwDay::highC).average().orElseThrow(),
                operated.stream().min(Comparator.comparingDouble(EpwDay::lowC).thenComparing(EpwDay::highC)).orElseThrow(),
                operated.stream().max(Comparator.comparingDouble(EpwDay::highC)).orElseThrow(), sunShare(year, days, month));
    }

    /** By the same clear sky that the share is a share of when buses are driven through the day. */
    private static Optional<Double> sunShare(EpwYear year, List<EpwDay> days, Month month) {
        double measured = days.stream().mapToDouble(EpwDay::sunWhPerM2).average().orElse(0);
        double clear = Arrays.stream(ClearSky.hourlyWPerM2(year.place().latitudeDeg(), month.getValue() - 1, 1)).sum();
        return measured > 0 && clear > 0 && year.sunShareTold(month) >= LEAST_SUN_TOLD
                ? Optional.of(Math.min(1, measured / clear)) : Optional.empty();
    }
}
