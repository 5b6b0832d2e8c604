package org.amberyard.core.money;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;
import org.amberyard.core.money.BreakEven.Cheaper;

/** A difference of costs over an input, each value worked out once: a scan in equal steps, and the dips between them. */
final class DifferenceScan {
    private static final int DIP_STEPS = 40;
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    private final DoubleUnaryOperator difference;
    private final double tolerance;
    private final TreeMap<Double, Double> known = new TreeMap<>();

    DifferenceScan(DoubleUnaryOperator difference, double tolerance) {
        this.difference = difference;
        this.tolerance = tolerance;
    }

    void scan(double low, double high, int steps) {
        for (int step = 0; step <= steps; step++) {
            at(low + (high - low) * step / steps);
        }
        followDips();
    }

    double at(double input) {
        return known.computeIfAbsent(input, difference::applyAsDouble);
    }

    Cheaper cheaper(double input) {
        double extra = at(input);
        return Math.abs(extra) <= tolerance ? Cheaper.NEITHER : extra < 0 ? Cheaper.PLAN : Cheaper.OTHER;
    }

    SortedMap<Double, Double> known() {
        return known;
    }

    private void followDips() {
        List<Double> inputs = new ArrayList<>(known.keySet());
        for (int i = 1; i < inputs.size() - 1; i++) {
            double sign = Math.signum(at(inputs.get(i)));
            double size = sign * at(inputs.get(i));
            double before = sign * at(inputs.get(i - 1));
            double after = sign * at(inputs.get(i + 1));
            if (size > tolerance && before >= size && after >= size) {
                follow(inputs.get(i - 1), inputs.get(i + 1), sign);
            }
        }
    }

    /** Golden section search for the lowest point of the difference times its sign, until it is past zero. */
    private void follow(double from, double to, double sign) {
        double a = from;
        double b = to;
        for (int i = 0; i < DIP_STEPS; i++) {
            double left = b - GOLDEN * (b - a);
            double right = a + GOLDEN * (b - a);
            if (sign * at(left) <= 0 || sign * at(right) <= 0) {
                return;
            }
            if (sign * at(left) < sign * at(right)) {
                b = right;
            } else {
                a = left;
            }
        }
    }
}
