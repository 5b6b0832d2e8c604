package org.amberyard.core.battery;

import java.util.ArrayList;
import java.util.List;

/**
 * Rainflow count of a history, by ASTM E1049-85 section 5.4.4: each closed swing counts as one cycle, a swing that holds the
 * start of the history and what is left at the end as half cycles. Equal values in a row and values between two others
 * count as nothing, so only turning points matter.
 */
public final class Rainflow {

    /**
     * What was counted, in order found.
     *
     * @param range difference of the two turning points
     * @param mean middle of the two
     * @param count 1 for a cycle, 0.5 for a half cycle
     */
    public record Cycle(double range, double mean, double count) {
    }

    private final List<Double> points = new ArrayList<>();
    private final List<Cycle> cycles = new ArrayList<>();

    private Rainflow() {
    }

    /** Cycles of a history; none in a history of one value. */
    public static List<Cycle> of(double... history) {
        Rainflow count = new Rainflow();
        for (double value : turningPoints(history)) {
            count.points.add(value);
            count.closeSwings();
        }
        count.countResidue();
        return List.copyOf(count.cycles);
    }

    private static List<Double> turningPoints(double[] history) {
        List<Double> turns = new ArrayList<>();
        for (double value : history) {
            int last = turns.size() - 1;
            if (last >= 0 && turns.get(last) == value) {
                continue;
            }
            if (last >= 1 && turns.get(last) > turns.get(last - 1) == value > turns.get(last)) {
                turns.remove(last);
            }
            turns.add(value);
        }
        return turns;
    }

    private void closeSwings() {
        while (points.size() >= 3 && range(points.size() - 2) >= range(points.size() - 3)) {
            int from = points.size() - 3;
            if (from == 0) {
                count(0, 0.5);
                points.remove(0);
            } else {
                count(from, 1);
                points.remove(from);
                points.remove(from);
            }
        }
    }

    private void countResidue() {
        for (int from = 0; from + 1 < points.size(); from++) {
            count(from, 0.5);
        }
    }

    private double range(int from) {
        return Math.abs(points.get(from + 1) - points.get(from));
    }

    private void count(int from, double count) {
        cycles.add(new Cycle(range(from), (points.get(from) + points.get(from + 1)) / 2, count));
    }
}
