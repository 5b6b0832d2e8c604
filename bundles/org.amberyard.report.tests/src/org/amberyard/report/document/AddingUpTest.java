package org.amberyard.report.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class AddingUpTest {

    private static List<BigDecimal> of(String... figures) {
        return List.of(figures).stream().map(BigDecimal::new).toList();
    }

    private static BigDecimal sum(List<BigDecimal> figures) {
        return figures.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    @Test
    void linesAddUpToTheTotalThatIsRoundedOnce() {
        assertEquals(of("1", "0", "0"), AddingUp.rounded(List.of(0.4, 0.4, 0.4), 0), "1.2 is 1; the first of equals gets it");
        assertEquals(of("0.34", "0.33", "0.33"), AddingUp.rounded(List.of(1 / 3.0, 1 / 3.0, 1 / 3.0), 2));
        assertEquals(of("3", "-1", "0"), AddingUp.rounded(List.of(2.6, -1.2, 0.5), 0), "1.9 is 2; credits round down first");
        assertEquals(List.of(), AddingUp.rounded(List.of(), 0));
    }

    @Test
    void sourcesAddUpToAGivenCost() {
        assertEquals(of("33", "34", "33"), AddingUp.rounded(List.of(33.2, 33.5, 33.3), new BigDecimal("100")));
    }

    @Test
    void anyFiguresAddUpAndAreWithinAUnit() {
        Random random = new Random(7);
        for (int n = 1; n < 200; n++) {
            List<Double> figures = random.doubles(n, -1e6, 1e6).boxed().toList();
            List<BigDecimal> printed = AddingUp.rounded(figures, 1);
            double total = figures.stream().mapToDouble(Double::doubleValue).sum();
            assertEquals(total, sum(printed).doubleValue(), 0.0501);
            for (int i = 0; i < n; i++) {
                assertTrue(Math.abs(printed.get(i).doubleValue() - figures.get(i)) < 0.1 + 1e-9);
            }
        }
    }
}
