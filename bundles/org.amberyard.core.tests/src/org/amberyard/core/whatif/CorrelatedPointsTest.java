package org.amberyard.core.whatif;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.stat.correlation.SpearmansCorrelation;
import org.junit.jupiter.api.Test;

class CorrelatedPointsTest {
    private static final List<String> NAMES = List.of("diesel price", "power price", "grant", "mileage");
    private static final int DRAWS = 2000;

    private static double[] column(UnitPoints points, int dimension) {
        return IntStream.range(0, DRAWS).mapToDouble(d -> points.at(d, dimension)).toArray();
    }

    @Property(tries = 50)
    void twoInputsAreCorrelatedAsAsked(@ForAll long seed, @ForAll @DoubleRange(min = -0.95, max = 0.95) double target) {
        CorrelatedPoints points = CorrelatedPoints.of(new LatinHypercube(seed, DRAWS, 4), DRAWS, NAMES,
                List.of(new RankCorrelation(0, 2, target)));
        assertEquals(target, Ranks.correlation(column(points, 0), column(points, 2)), 0.03);
    }

    @Test
    void valuesStayAndOthersAreLeftAlone() {
        UnitPoints sample = new LatinHypercube(3, DRAWS, 4);
        CorrelatedPoints points = CorrelatedPoints.of(sample, DRAWS, NAMES, List.of(new RankCorrelation(1, 2, 0.6)));
        assertArrayEquals(column(sample, 0), column(points, 0), 0);
        assertArrayEquals(column(sample, 3), column(points, 3), 0);
        assertArrayEquals(IntStream.range(0, DRAWS).mapToDouble(d -> sample.at(d, 2)).sorted().toArray(),
                IntStream.range(0, DRAWS).mapToDouble(d -> points.at(d, 2)).sorted().toArray(), 0);
        assertEquals(0, Ranks.correlation(column(points, 0), column(points, 2)), 0.1);
    }

    /** Spearman's correlation by another implementation. */
    @Test
    void rankCorrelationAsOthersHaveIt() {
        UnitPoints sample = new RandomPoints(11, 2);
        assertEquals(new SpearmansCorrelation().correlation(column(sample, 0), column(sample, 1)),
                Ranks.correlation(column(sample, 0), column(sample, 1)), 1e-12);
    }

    @Test
    void equalNumbersAreRankedByPlace() {
        assertArrayEquals(new int[] {1, 0, 2, 3}, Ranks.of(new double[] {5, 1, 5, 7}));
    }

    private static String message(RankCorrelation... correlations) {
        return assertThrows(IllegalArgumentException.class,
                () -> CorrelatedPoints.of(new RandomPoints(1, 4), DRAWS, NAMES,
                        List.of(correlations)))
                .getMessage();
    }

    /**
     * Two inputs correlated 0.9 with a third cannot be correlated −0.9 with each other. On the scores of ranks, 0.9 is
     * 2 sin(0.15 π) = 0.90798, which leaves 2 · 0.90798² − 1 = 0.64886 to 1, and that is 0.63 of ranks.
     */
    @Test
    void thePairInTheWayIsNamed() {
        assertEquals("Correlations between diesel price, power price, grant cannot all hold: with the others as they"
                + " are, that of power price with grant must be from 0.63 to 1.00 but is -0.50",
                message(new RankCorrelation(0, 1, 0.9),
                        new RankCorrelation(0, 2, 0.9), new RankCorrelation(1, 2, -0.5)));
    }

    @Test
    void severalPairsInTheWay() {
        String message = message(new RankCorrelation(0, 1, 0.9), new RankCorrelation(0, 2, 0.9),
                new RankCorrelation(0, 3, 0.9),
                new RankCorrelation(1, 2, -0.9), new RankCorrelation(1, 3, -0.9), new RankCorrelation(2, 3, -0.9));
        assertTrue(message.startsWith("Correlations between diesel price, power price, grant, mileage cannot all hold,"
                + " and changing one of them is not enough: in the nearest that can, that of "), message);
    }

    @Test
    void slipsAreSaid() {
        assertEquals("Correlation of grant with diesel price is given more than once",
                message(new RankCorrelation(2, 0, 0.1), new RankCorrelation(0, 2, 0.1)));
        assertEquals("Place of an input in a correlation is 4 but must be below the number of inputs, 4",
                message(new RankCorrelation(2, 4, 0.1)));
        assertThrows(IllegalArgumentException.class, () -> new RankCorrelation(1, 1, 0.1));
        assertThrows(IllegalArgumentException.class, () -> new RankCorrelation(1, 2, 1));
        assertThrows(IllegalArgumentException.class,
                () -> CorrelatedPoints.of(new RandomPoints(1, 4), 4, NAMES, List.of()));
    }

    /**
     * Higham 2002, the example of section 4: eigenvalues of (1 1 0; 1 1 1; 0 1 1) bring it to 0.7607 and 0.1573 (from
     * memory).
     */
    @Test
    void nearestCorrelationMatrix() {
        RealMatrix nearest = NearestCorrelation.of(MatrixUtils.createRealMatrix(new double[][] {{1, 1, 0}, {1, 1, 1},
            {0, 1, 1}}));
        assertEquals(0.7607, nearest.getEntry(0, 1), 5e-5);
        assertEquals(0.1573, nearest.getEntry(0, 2), 5e-5);
        for (double eigenvalue : new EigenDecomposition(nearest).getRealEigenvalues()) {
            assertTrue(eigenvalue > -1e-6);
        }
    }
}
