package org.amberyard.core.tariff;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Metered months before a billed one. Months before the first are taken to have had no demand, as with a new service.
 *
 * @param months months, one after the other, the last just before the billed month
 */
public record PeakHistory(List<MeterMonth> months) {
    private static final int MONTHS = 12;

    /** A new service. */
    public static final PeakHistory NONE = new PeakHistory(List.of());

    /**
     * @throws IllegalArgumentException when the months do not follow one another
     */
    public PeakHistory {
        months = List.copyOf(months);
        MeterMonth.requireConsecutive(months);
    }

    /**
     * History from bills that tell only the highest demand of each month, which then counts at every hour of
     * every kind of day.
     *
     * @param firstMonth month of the first demand, 0 for January
     * @param peaksKw highest demands, kW
     */
    public static PeakHistory ofPeaks(int firstMonth, double... peaksKw) {
        return new PeakHistory(IntStream.range(0, peaksKw.length)
                .mapToObj(i -> ofPeak((firstMonth + i) % MONTHS, peaksKw[i])).toList());
    }

    private static MeterMonth ofPeak(int month, double peakKw) {
        return new MeterMonth(month, Stream.of(DayClass.values())
                .map(day -> new LoadDay("the bill", day, 1, new double[] {peakKw})).toList());
    }

    /** The history with a further month. */
    public PeakHistory then(MeterMonth month) {
        return new PeakHistory(Stream.concat(months.stream(), Stream.of(month)).toList());
    }

    /** Highest demand that a ratchet counts. */
    Optional<PeakMoment> highest(Ratchet ratchet) {
        return months.subList(Math.max(0, months.size() - ratchet.priorMonths()), months.size()).stream()
                .flatMap(m -> new MonthHours(ratchet.counted(), m.month()).peak(m).stream())
                .max(Comparator.comparingDouble(PeakMoment::kw));
    }
}
