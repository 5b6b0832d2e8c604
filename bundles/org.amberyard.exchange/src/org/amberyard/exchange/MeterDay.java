package org.amberyard.exchange;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.stream.IntStream;

/** Readings of a day by the steps of its clock; a step may have been read not at all, or twice where the clock was put back. */
final class MeterDay {
    private static final int EARLIEST_CHANGE_MIN = 60;
    private static final int LATEST_CHANGE_MIN = 180;

    private final LocalDate date;
    private final double[] kwSum;
    private final int[] count;

    MeterDay(LocalDate date, int steps) {
        this.date = date;
        this.kwSum = new double[steps];
        this.count = new int[steps];
    }

    void add(int step, double kw) {
        kwSum[step] += kw;
        count[step]++;
    }

    LocalDate date() {
        return date;
    }

    boolean isWeekend() {
        return date.getDayOfWeek() == DayOfWeek.SATURDAY || date.getDayOfWeek() == DayOfWeek.SUNDAY;
    }

    boolean hasReading(int step) {
        return count[step] > 0;
    }

    /** Mean load of a step that has been read, kW. */
    double kw(int step) {
        return kwSum[step] / count[step];
    }

    double peakKw() {
        return IntStream.range(0, count.length).filter(this::hasReading).mapToDouble(this::kw).max().orElse(0);
    }

    int readings() {
        return Arrays.stream(count).sum();
    }

    int missing() {
        return (int) Arrays.stream(count).filter(c -> c == 0).count();
    }

    /** True when just an hour of the small hours of a Sunday stands there twice. */
    boolean isClockPutBack() {
        return missing() == 0 && isSundayHour(2);
    }

    /** True when just an hour of the small hours of a Sunday is missing. */
    boolean isClockPutForward() {
        return readings() == count.length - missing() && isSundayHour(0);
    }

    /** True when a step stands there twice for another reason than the clock. */
    boolean hasDuplicates() {
        return Arrays.stream(count).anyMatch(c -> c > 1) && !isClockPutBack();
    }

    private boolean isSundayHour(int times) {
        int[] odd = IntStream.range(0, count.length).filter(s -> count[s] != 1).toArray();
        int perHour = count.length / 24;
        int stepMin = 60 / perHour;
        return date.getDayOfWeek() == DayOfWeek.SUNDAY && odd.length == perHour
                && Arrays.stream(odd).allMatch(s -> count[s] == times)
                && odd[odd.length - 1] - odd[0] == perHour - 1
                && odd[0] * stepMin >= EARLIEST_CHANGE_MIN && odd[0] * stepMin <= LATEST_CHANGE_MIN;
    }
}
