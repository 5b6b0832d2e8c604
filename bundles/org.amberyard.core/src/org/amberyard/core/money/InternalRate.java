package org.amberyard.core.money;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.amberyard.core.math.RealRoots;

/**
 * Internal rates of return of a cash flow: the yearly rates between -99 % and 1,000 % at which its present value is zero, all
 * of them. A flow whose sign changes more than once may have several, and then none of them ranks it.
 *
 * @param kind how many there are
 * @param rates the rates, rising
 * @param signChanges how often the sign of the flow changes, which bounds their number (Descartes' rule of signs)
 */
public record InternalRate(Kind kind, List<Double> rates, int signChanges) {
    /** Lowest rate looked for, per year; itself left out. */
    public static final double LOWEST = -0.99;
    /** Highest rate looked for, per year; itself left out. */
    public static final double HIGHEST = 10;

    /** A present value this small beside the sum of its parts is zero within rounding. */
    private static final double ROUNDING = 1e-11;
    private static final double GRID = 1000;

    /** Kinds of answer. */
    public enum Kind {
        /** No rate makes the flow worth nothing. */
        NONE,
        /** One rate does. */
        ONE,
        /** Several do. */
        SEVERAL,
        /** There is no flow, so that every rate does. */
        EVERY
    }

    public InternalRate {
        rates = List.copyOf(rates);
    }

    /** All rates of a flow. */
    public static InternalRate of(CashFlow flow) {
        if (flow.amounts().stream().allMatch(a -> a == 0)) {
            return new InternalRate(Kind.EVERY, List.of(), 0);
        }
        double perStep = 1.0 / flow.stepsPerYear();
        double low = Math.floor(GRID * Math.pow(1 + LOWEST, perStep)) / GRID;
        double high = Math.ceil(GRID * Math.pow(1 + HIGHEST, perStep)) / GRID;
        List<Double> rates = RealRoots.between(flow.growthCoefficients(), low, high).stream()
                .filter(root -> !root.touching() || isZero(flow, root.at()))
                .map(root -> Math.pow(root.at(), flow.stepsPerYear()) - 1)
                .filter(rate -> rate > LOWEST && rate < HIGHEST).toList();
        Kind kind = rates.isEmpty() ? Kind.NONE : rates.size() == 1 ? Kind.ONE : Kind.SEVERAL;
        return new InternalRate(kind, rates, flow.signChanges());
    }

    private static boolean isZero(CashFlow flow, double growth) {
        double sum = 0;
        double size = 0;
        for (int step = 0; step < flow.amounts().size(); step++) {
            double part = flow.amounts().get(step) * Math.pow(growth, -step);
            sum += part;
            size += Math.abs(part);
        }
        return Math.abs(sum) <= ROUNDING * size;
    }

    /** The answer in words, rates in percent with two decimals. */
    public String words() {
        return switch (kind) {
            case NONE -> "none between -99 % and 1,000 % a year";
            case ONE -> percent(rates.get(0));
            case SEVERAL -> rates.stream().map(InternalRate::percent).collect(Collectors.joining(" and ", "several: ",
                    "; the flow changes sign " + signChanges + " times, so none of them ranks it"));
            case EVERY -> "every rate: there is no difference";
        };
    }

    private static String percent(double rate) {
        return String.format(Locale.ROOT, "%.2f %%", 100 * rate);
    }
}
