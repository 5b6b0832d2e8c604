package org.amberyard.core.money;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.amberyard.core.math.Checks;

/**
 * Amounts at equal steps of time; receipts and savings are positive.
 *
 * @param stepsPerYear steps in a year
 * @param amounts amounts; the first falls at the base date
 */
public record CashFlow(int stepsPerYear, List<Double> amounts) {

    public CashFlow {
        Checks.positive("Steps per year", stepsPerYear);
        amounts = List.copyOf(amounts);
        amounts.forEach(a -> Checks.finite("Amount of a cash flow", a));
    }

    /** Amounts a year apart. */
    public static CashFlow yearly(double... amounts) {
        return new CashFlow(1, Arrays.stream(amounts).boxed().toList());
    }

    /** Time of a step, years after the base date. */
    public double years(int step) {
        return (double) step / stepsPerYear;
    }

    /** Time of the last step, years. */
    public double length() {
        return years(amounts.size() - 1);
    }

    /** Present value at a rate per year. */
    public double presentValue(double rate) {
        double sum = 0;
        for (int step = 0; step < amounts.size(); step++) {
            sum += amounts.get(step) * DiscountFactor.single(rate, years(step));
        }
        return sum;
    }

    /** How often the sign of the amounts changes in time; no more rates of return than that can exist. */
    public int signChanges() {
        double[] signs = amounts.stream().mapToDouble(Math::signum).filter(s -> s != 0).toArray();
        int changes = 0;
        for (int i = 1; i < signs.length; i++) {
            changes += signs[i] == signs[i - 1] ? 0 : 1;
        }
        return changes;
    }

    /** Amounts by falling time: the coefficients, by rising power, of the future value in the growth of a step. */
    double[] growthCoefficients() {
        List<Double> reversed = new ArrayList<>(amounts);
        Collections.reverse(reversed);
        return reversed.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
