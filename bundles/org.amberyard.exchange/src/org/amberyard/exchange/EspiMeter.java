package org.amberyard.exchange;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.LongFunction;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/**
 * A meter of a Green Button file.
 *
 * @param file name of the file
 * @param title what the file calls the meter; may be blank
 * @param type what its readings are
 * @param clock its local clock; empty when the file does not tell
 * @param readings its readings, in no order
 */
record EspiMeter(String file, String title, EspiReadingType type, Optional<EspiClock> clock, EspiReadings readings) {
    private static final long MINUTE_S = 60;

    /** Why the meter cannot be a building's load; empty when it can. */
    Optional<String> objection() {
        return type.objection().or(() -> readings.count() == 0 ? Optional.of("it has no readings") : Optional.empty())
                .or(() -> isKept() ? Optional.empty()
                        : Optional.of("its readings are " + words(lengthS()) + " long. " + MeterGrid.objection(lengthS() / MINUTE_S)));
    }

    private boolean isKept() {
        return lengthS() % MINUTE_S == 0 && MeterGrid.stepMin(lengthS() / MINUTE_S).isPresent();
    }

    private static String words(long seconds) {
        return seconds % 86_400 == 0 ? seconds / 86_400 + (seconds == 86_400 ? " day" : " days") : String.format(Locale.ROOT, "%.0f min", seconds / 60.0);
    }

    /** What tells the meter from others. */
    String words() {
        return (title.isBlank() ? "Meter without a name" : title) + " (" + type.unit().label()
                + (type.isNet() ? ", net of what is fed back" : ", delivered")
                + String.format(Locale.ROOT, ", %,d readings)", readings.count());
    }

    /** Length of the intervals: that of the reading type, else that of most readings, else most steps between them, seconds. */
    private long lengthS() {
        if (type.intervalS() > 0) {
            return type.intervalS();
        }
        long own = most(IntStream.range(0, readings.count()).mapToLong(readings::lengthS));
        int[] order = readings.inOrder();
        return own > 0 ? own : most(IntStream.range(1, order.length)
                .mapToLong(i -> readings.startS(order[i]) - readings.startS(order[i - 1])));
    }

    private static long most(LongStream lengths) {
        Map<Long, Integer> counts = new HashMap<>();
        lengths.forEach(length -> counts.merge(length, 1, Integer::sum));
        return counts.entrySet().stream().max(Map.Entry.comparingByValue()).map(Map.Entry::getKey).orElse(0L);
    }

    /**
     * The readings on a local clock.
     *
     * @param local what the clock shows at seconds since 1970 UTC
     * @throws ImportException when a reading cannot be a building's load, or contradicts another
     */
    MeterFile load(LongFunction<LocalDateTime> local) throws ImportException {
        ProblemList problems = new ProblemList(file);
        List<MeterReading> loads = new ArrayList<>();
        long lengthS = lengthS();
        int[] order = readings.inOrder();
        for (int i = 0; i < order.length; i++) {
            int at = order[i];
            if (i > 0 && readings.startS(at) == readings.startS(order[i - 1])) {
                checkSame(at, order[i - 1], problems);
                continue;
            }
            LocalDateTime start = local.apply(readings.startS(at));
            check(at, start, lengthS, problems);
            loads.add(new MeterReading(start, type.kilo(readings.value(at)), readings.line(at)));
        }
        problems.refuseIfAny();
        return MeterFile.of(file, MeterForm.GREEN_BUTTON, type.unit(), (int) (lengthS / MINUTE_S), false, loads);
    }

    private void check(int at, LocalDateTime start, long lengthS, ProblemList problems) {
        if (readings.lengthS(at) != 0 && readings.lengthS(at) != lengthS) {
            problems.add(readings.line(at), "duration", "The reading is " + readings.lengthS(at) + " s long but those of its meter "
                    + "are " + lengthS + " s.");
        }
        if (start.toLocalTime().toSecondOfDay() % lengthS != 0) {
            problems.add(readings.line(at), "start", "The reading starts at " + start + " of the local clock, which is no full "
                    + lengthS / 60 + " min.");
        }
        if (readings.value(at) < 0) {
            problems.add(readings.line(at), "value", String.format(Locale.ROOT, "“%s” must be at least 0: below it power is fed "
                    + "back. Choose the meter of what is delivered.", readings.value(at)));
        }
    }

    /** Blocks may overlap where a file was put together of several. */
    private void checkSame(int at, int before, ProblemList problems) {
        if (readings.value(at) != readings.value(before)) {
            problems.add(readings.line(at), "value", String.format(Locale.ROOT, "“%s” contradicts “%s” on line %d, of the same "
                    + "meter and interval.", readings.value(at), readings.value(before), readings.line(before)));
        }
    }
}
