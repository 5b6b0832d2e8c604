package org.amberyard.core.whatif;

import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.math.Checks;

/** How many draws fall where, in bars of the same width. */
public final class Histogram {
    private Histogram() {
    }

    /**
     * A bar.
     *
     * @param from lower end, in it
     * @param to upper end, in the next bar; in this one where it is the last
     * @param draws draws between
     */
    public record Bar(double from, double to, int draws) {
    }

    /**
     * The bars of a range; one bar where the range has no length.
     *
     * @param values results of draws; those outside the range are not counted
     * @param bars how many, 1 or more
     */
    public static List<Bar> of(double[] values, double low, double high, int bars) {
        Checks.atLeast("Number of bars", bars, 1);
        Checks.within("Lower end of the bars", low, Double.NEGATIVE_INFINITY, high);
        int used = high > low ? bars : 1;
        int[] counts = new int[used];
        for (double value : values) {
            if (value >= low && value <= high) {
                counts[high > low ? Math.min(used - 1, (int) ((value - low) / (high - low) * used)) : 0]++;
            }
        }
        return IntStream.range(0, used).mapToObj(bar -> new Bar(low + (high - low) * bar / used,
                bar == used - 1 ? high : low + (high - low) * (bar + 1) / used, counts[bar])).toList();
    }
}
