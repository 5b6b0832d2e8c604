package org.amberyard.core.money;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.stream.Collectors;

/**
 * Where one plan is cheaper than another as an input runs over a range: stretches that cover the range, with the values at
 * which they meet.
 *
 * @param stretches neighbouring stretches from the lower to the upper end, each of another kind than the one before; none where
 *         nothing could be worked out
 */
public record BreakEven(List<Stretch> stretches) {

    /** Which plan costs less. */
    public enum Cheaper {
        /** The plan asked about. */
        PLAN,
        /** Neither, to within the tolerance. */
        NEITHER,
        /** The plan it is compared with. */
        OTHER
    }

    /**
     * A part of the range.
     *
     * @param from lower end
     * @param to upper end
     * @param cheaper which plan costs less in it
     * @param jumps true when the difference jumps over zero at the upper end instead of being zero there
     * @param left cost of the plan less that of the other at the upper end, found by putting that value in
     */
    public record Stretch(double from, double to, Cheaper cheaper, boolean jumps, double left) {
    }

    public BreakEven {
        stretches = List.copyOf(stretches);
    }

    /** Values of the input at which the cheaper plan changes. */
    public List<Double> values() {
        return stretches.stream().skip(1).map(Stretch::from).toList();
    }

    /**
     * The answer in words, of one stretch or more.
     *
     * @param plan name of the plan asked about
     * @param other name of the plan it is compared with
     * @param value how a value of the input is written, with its unit
     */
    public String words(String plan, String other, DoubleFunction<String> value) {
        if (stretches.size() == 1) {
            return alone(plan, other, value);
        }
        List<String> parts = new ArrayList<>();
        for (int i = 0; i < stretches.size(); i++) {
            if (stretches.get(i).cheaper() == Cheaper.PLAN) {
                parts.add(part(i, value));
            }
        }
        String where = parts.isEmpty() ? "never" : parts.stream().collect(Collectors.joining(" and "));
        return plan + " is cheaper than " + other + " " + where;
    }

    private String alone(String plan, String other, DoubleFunction<String> value) {
        Stretch all = stretches.get(0);
        String range = " from " + value.apply(all.from()) + " to " + value.apply(all.to());
        return switch (all.cheaper()) {
            case PLAN -> plan + " is always cheaper than " + other + range;
            case OTHER -> plan + " is never cheaper than " + other + range;
            case NEITHER -> plan + " and " + other + " cost the same" + range;
        };
    }

    private String part(int index, DoubleFunction<String> value) {
        Stretch stretch = stretches.get(index);
        if (index == 0) {
            return "below " + value.apply(stretch.to());
        }
        return index == stretches.size() - 1 ? "above " + value.apply(stretch.from())
                : "from " + value.apply(stretch.from()) + " to " + value.apply(stretch.to());
    }
}
