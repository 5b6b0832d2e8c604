package org.amberyard.exchange;

import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * The intervals in which loads are kept, and finer ones put together to them: energies are summed, powers averaged, which is what a meter of
 * the coarser interval would have shown. Coarser intervals than an hour are refused: how a day's energy lies within the day decides demand and
 * bills, and any spread of it would be an invention.
 */
final class MeterGrid {
    private static final int[] STEPS_MIN = {15, 30, 60};
    private static final int DAY_MIN = 1440;

    private MeterGrid() {
    }

    /** The finest interval that readings can be kept in, minutes; empty where there is none. */
    static OptionalInt stepMin(long ownMin) {
        return ownMin <= 0 ? OptionalInt.empty() : IntStream.of(STEPS_MIN).filter(s -> s % ownMin == 0).findFirst();
    }

    /** What is wrong with intervals that can be kept in none, without a full stop. */
    static String objection(long ownMin) {
        String allowed = "Intervals of 15, 30 or 60 min are understood, and finer ones that make these up, such as 5 min";
        return ownMin > 60 ? "What is drawn when, which decides demand and bills, cannot be told from readings every "
                + (ownMin % DAY_MIN == 0 ? ownMin / DAY_MIN + (ownMin == DAY_MIN ? " day" : " days") : ownMin + " min")
                + "; ask the utility for intervals of 15 min, or enter energy and peak of each month as bills. " + allowed : allowed;
    }

    /**
     * Readings put together to a coarser interval. One of which a part is missing is left out, as a gap.
     *
     * @param fine readings in the order of time; the hour that comes twice when clocks are put back may stand there twice
     */
    static List<MeterReading> together(List<MeterReading> fine, int ownMin, int stepMin, MeterUnit unit) {
        int parts = stepMin / ownMin;
        List<MeterReading> together = new ArrayList<>();
        List<MeterReading> open = new ArrayList<>();
        for (MeterReading reading : fine) {
            if (!open.isEmpty() && !goesOn(open.get(open.size() - 1), reading, ownMin, stepMin)) {
                open.clear();
            }
            open.add(reading);
            if (open.size() == parts) {
                sum(open, stepMin, unit).ifPresent(together::add);
                open.clear();
            }
        }
        return together;
    }

    private static boolean goesOn(MeterReading last, MeterReading next, int ownMin, int stepMin) {
        return last.start().plusMinutes(ownMin).equals(next.start()) && slot(last, stepMin).equals(slot(next, stepMin));
    }

    private static Optional<MeterReading> sum(List<MeterReading> parts, int stepMin, MeterUnit unit) {
        MeterReading first = parts.get(0);
        double sum = parts.stream().mapToDouble(MeterReading::number).sum();
        return slot(first, stepMin).equals(first.start())
                ? Optional.of(new MeterReading(first.start(), unit == MeterUnit.KW ? sum / parts.size() : sum, first.row())) : Optional.empty();
    }

    private static LocalDateTime slot(MeterReading reading, int stepMin) {
        int minute = reading.start().getMinute();
        return reading.start().truncatedTo(ChronoUnit.HOURS).plusMinutes(minute - minute % stepMin);
    }
}
