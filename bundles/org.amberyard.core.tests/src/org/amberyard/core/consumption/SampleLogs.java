package org.amberyard.core.consumption;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/** Invented logs for tests. */
final class SampleLogs {
    /** Town and country days, a temperature and a mean speed each. */
    private static final double[][] DAYS = {{26, 22}, {19, 36}, {13, 24}, {8, 38}, {4, 20}, {1, 34}, {-4, 18}, {-8, 40},
        {-12, 26}, {-16, 30}, {-20, 22}, {-24, 33}, {15, 21}, {31, 33}};

    private SampleLogs() {
    }

    static FitSettings settings() {
        return new FitSettings(18, 22, 14, 6, OptionalDouble.empty());
    }

    /** Logs without scatter of a bus that follows a curve. */
    static List<LogEntry> of(ConsumptionCurve curve) {
        return IntStream.range(0, DAYS.length).mapToObj(i -> entry(curve, 80 + 7 * i, DAYS[i][1], DAYS[i][0])).toList();
    }

    static LogEntry entry(ConsumptionCurve curve, double km, double speedKmh, double outsideC) {
        double hours = km / speedKmh;
        return new LogEntry(km, hours, curve.totalKwh(km, hours, outsideC), outsideC);
    }

    /** Fourteen days with scatter, from a random generator. */
    static List<LogEntry> scattered() {
        return List.of(new LogEntry(120, 5.5, 99, 25), new LogEntry(150, 4.2, 112, 19), new LogEntry(98, 4.1, 85, 13),
                new LogEntry(160, 4.2, 149, 8), new LogEntry(95, 4.8, 107, 4), new LogEntry(140, 4.1, 145, 1),
                new LogEntry(88, 4.9, 114, -4), new LogEntry(152, 3.8, 168, -8), new LogEntry(110, 4.2, 149, -12),
                new LogEntry(125, 4.2, 176, -16), new LogEntry(90, 4.3, 77, 15), new LogEntry(145, 4.4, 109, 21),
                new LogEntry(105, 4.2, 90, 27), new LogEntry(84, 4.4, 109, -2));
    }

    /** Twelve months of which a rise below zero would fit best. */
    static List<LogEntry> withoutRise() {
        return List.of(new LogEntry(520, 26, 455, 24.5), new LogEntry(610, 27, 505, 19), new LogEntry(580, 29, 500, 13),
                new LogEntry(640, 27, 585, 8.5), new LogEntry(600, 31, 640, 4), new LogEntry(560, 25, 580, 1),
                new LogEntry(480, 26, 620, -3.5), new LogEntry(510, 22, 640, -8), new LogEntry(450, 24, 690, -12),
                new LogEntry(620, 25, 560, 15), new LogEntry(590, 30, 470, 21), new LogEntry(540, 24, 490, 27));
    }
}
