package org.amberyard.core.plan;

import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.duty.Climate;
import org.amberyard.core.tariff.DayClass;
import org.amberyard.core.tariff.MarginalPrices;
import org.amberyard.core.tariff.MeterMonth;
import org.amberyard.core.tariff.PeakHistory;
import org.amberyard.core.yard.Metering;
import org.amberyard.core.yard.YardDetail;
import org.amberyard.core.yard.YardMemory;
import org.amberyard.core.yard.YardYear;

/**
 * What electricity costs on weekdays by month and hour, base-date money: the prices of the tariff in use when its introductory
 * years are over.
 */
final class YardPrices {
    private static final int HOUR_MIN = 60;
    /** Tariffs change on whole minutes, so that within one all is alike. */
    private static final double INSTANT_MIN = 1e-3;
    private static final int EVENING_H = 18;
    private static final int MORNING_H = 30;
    private static final int DAY_H = 24;

    private final List<MarginalPrices> months;
    private final int[] nightMin;

    /** Prices of the first blocks, as long as nobody knows what the meter will count. */
    YardPrices(Metering metering) {
        this(metering, IntStream.range(0, Climate.MONTHS).mapToObj(m -> new MeterMonth(m, List.of())).toList());
    }

    /** Prices of the blocks that a yard's year reaches; its loads are planned again only where the tariff has blocks. */
    static YardPrices of(YardYear year, YardMemory memory) {
        Metering metering = year.input().metering();
        return metering.tariff().mostBlocks() == 1 ? new YardPrices(metering)
                : new YardPrices(metering, YardDetail.of(year, memory).metered());
    }

    private YardPrices(Metering metering, List<MeterMonth> metered) {
        months = metered.stream().map(m -> new MarginalPrices(
                metering.tariff().inForce(m.month(), metering.tariff().settledYear()), m, PeakHistory.NONE)).toList();
        nightMin = IntStream.range(0, Climate.MONTHS).map(this::cheapestOfNight).toArray();
    }

    private int cheapestOfNight(int month) {
        return IntStream.range(EVENING_H, MORNING_H).map(h -> h % DAY_H * HOUR_MIN).boxed()
                .min((a, b) -> Double.compare(perKwh(month, a), perKwh(month, b))).orElseThrow();
    }

    /** The hour of the night, from 18:00 to 6:00, with the lowest price of energy; minutes after midnight. */
    int nightMin(int month) {
        return nightMin[month];
    }

    /** Mean over the months of the cheapest price of the night, money/kWh. */
    double nightPerKwh() {
        return IntStream.range(0, Climate.MONTHS).mapToDouble(m -> perKwh(m, nightMin[m])).average().orElseThrow();
    }

    /** Price of energy, money/kWh. */
    double perKwh(int month, double minute) {
        return months.get(month).pricePerKwh(DayClass.WEEKDAY, minute, minute + INSTANT_MIN);
    }

    /** Price of one more kW of the month's demand at a minute, money. */
    double perKw(int month, double minute) {
        MarginalPrices prices = months.get(month);
        int set = prices.demandSet(DayClass.WEEKDAY, minute, minute + INSTANT_MIN);
        double[] demand = prices.demandPrices();
        return IntStream.range(0, demand.length).filter(k -> (set >> k & 1) == 1).mapToDouble(k -> demand[k]).sum();
    }
}
