package org.amberyard.exchange;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/** Readings of interval blocks, in the order of a file, kept in arrays for there are many. */
final class EspiReadings {
    private long[] startS = new long[0];
    private long[] lengthS = new long[0];
    private double[] value = new double[0];
    private int[] line = new int[0];
    private int count;
    private int doubtful;

    /** Counts a reading that the file marks as estimated, questionable or projected. */
    void countDoubtful() {
        doubtful++;
    }

    /** Readings that the file marks as estimated, questionable or projected. */
    int doubtful() {
        return doubtful;
    }

    void add(long start, long length, double number, int row) {
        if (count == startS.length) {
            int room = Math.max(64, 2 * count);
            startS = Arrays.copyOf(startS, room);
            lengthS = Arrays.copyOf(lengthS, room);
            value = Arrays.copyOf(value, room);
            line = Arrays.copyOf(line, room);
        }
        startS[count] = start;
        lengthS[count] = length;
        value[count] = number;
        line[count++] = row;
    }

    void addAll(EspiReadings other) {
        doubtful += other.doubtful;
        for (int i = 0; i < other.count; i++) {
            add(other.startS[i], other.lengthS[i], other.value[i], other.line[i]);
        }
    }

    int count() {
        return count;
    }

    /** Start of a reading's interval, seconds since 1970 UTC. */
    long startS(int reading) {
        return startS[reading];
    }

    /** Length of a reading's interval, seconds. */
    long lengthS(int reading) {
        return lengthS[reading];
    }

    /** What the file says, in the unit of its reading type. */
    double value(int reading) {
        return value[reading];
    }

    /** Line on which a reading begins. */
    int line(int reading) {
        return line[reading];
    }

    /** Indices of the readings in the order of time. */
    int[] inOrder() {
        return IntStream.range(0, count).boxed()
                .sorted(Comparator.comparingLong((Integer i) -> startS[i])).mapToInt(Integer::intValue).toArray();
    }
}
