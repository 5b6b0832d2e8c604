package org.amberyard.report.document;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Rounds figures so that what is printed adds up: the total is rounded once from the unrounded figures, every figure is rounded
 * down, and the units that are missing from the total go to the figures that lost most (largest remainder; on equal remainders
 * to the first). So each printed figure is within one unit of its own.
 */
public final class AddingUp {
    private AddingUp() {
    }

    /**
     * Rounds figures to a total that is given or follows from them.
     *
     * @param values finite figures
     * @param scale decimals
     * @return the figures in their order; their sum is that of the unrounded figures, rounded as {@link PrintRounding} says
     */
    public static List<BigDecimal> rounded(List<Double> values, int scale) {
        BigDecimal sum = values.stream().map(v -> PrintRounding.exact(v, scale)).reduce(BigDecimal.ZERO, BigDecimal::add);
        return rounded(values, PrintRounding.rounded(sum, scale));
    }

    /**
     * Rounds figures to a total.
     *
     * @param total printed total; its scale is that of the figures, and it is within half a unit for each figure of their sum
     */
    static List<BigDecimal> rounded(List<Double> values, BigDecimal total) {
        List<BigDecimal> exact = values.stream().map(v -> PrintRounding.exact(v, total.scale())).toList();
        List<BigDecimal> printed = new ArrayList<>(exact.stream().map(v -> v.setScale(total.scale(), RoundingMode.FLOOR)).toList());
        BigDecimal unit = BigDecimal.ONE.movePointLeft(total.scale());
        int missing = total.subtract(printed.stream().reduce(BigDecimal.ZERO, BigDecimal::add)).divide(unit).intValueExact();
        List<Integer> byRemainder = IntStream.range(0, exact.size()).boxed().sorted(Comparator.comparing(
                (Integer i) -> exact.get(i).subtract(printed.get(i))).reversed().thenComparing(Comparator.naturalOrder())).toList();
        for (int i = 0; i < missing; i++) {
            int place = byRemainder.get(i % byRemainder.size());
            printed.set(place, printed.get(place).add(unit));
        }
        return List.copyOf(printed);
    }
}
