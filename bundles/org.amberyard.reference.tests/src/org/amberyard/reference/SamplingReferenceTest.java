package org.amberyard.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.whatif.Chance;
import org.amberyard.core.whatif.CorrelatedPoints;
import org.amberyard.core.whatif.LatinHypercube;
import org.amberyard.core.whatif.RandomPoints;
import org.amberyard.core.whatif.RankCorrelation;
import org.amberyard.core.whatif.Ranks;
import org.amberyard.core.whatif.SobolPoints;
import org.amberyard.core.whatif.UnitPoints;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Samples beside those of SciPy 1.17.1, and how even they are. */
class SamplingReferenceTest {
    /** Points are moved by this to keep off 0. */
    private static final double OFFSET = 0x1.0p-33;

    /** scipy.stats.qmc.Sobol(d=8, scramble=False, bits=30).random(16), each coordinate times 16. */
    @ParameterizedTest
    @CsvSource({"0, 0 8 12 4 6 14 10 2 3 11 15 7 5 13 9 1", "1, 0 8 4 12 6 14 2 10 5 13 1 9 3 11 7 15",
        "2, 0 8 4 12 10 2 14 6 15 7 11 3 5 13 1 9", "3, 0 8 4 12 14 6 10 2 7 15 3 11 9 1 13 5",
        "4, 0 8 12 4 6 14 10 2 9 1 5 13 15 7 3 11", "5, 0 8 12 4 2 10 14 6 5 13 9 1 7 15 11 3",
        "6, 0 8 4 12 6 14 2 10 7 15 3 11 1 9 5 13", "7, 0 8 12 4 14 6 2 10 15 7 3 11 1 9 13 5"})
    void firstSobolPoints(int dimension, String sixteenths) {
        String[] points = sixteenths.split(" ");
        SobolPoints sobol = SobolPoints.plain(8);
        for (int draw = 0; draw < 16; draw++) {
            assertEquals(Integer.parseInt(points[draw]) / 16.0 + OFFSET, sobol.at(draw, dimension), 0);
        }
    }

    /** Points 777 and 1023 of scipy.stats.qmc.Sobol(d=1000, scramble=False, bits=30). */
    @ParameterizedTest
    @CsvSource({"0,0.6923828125,0.0009765625", "1,0.9365234375,0.7529296875", "9,0.3232421875,0.8505859375",
        "99,0.5107421875,0.5302734375", "499,0.3212890625,0.4736328125", "999,0.3837890625,0.8564453125"})
    void laterSobolPoints(int dimension, double point777, double point1023) {
        SobolPoints sobol = SobolPoints.plain(1000);
        assertEquals(point777 + OFFSET, sobol.at(777, dimension), 0);
        assertEquals(point1023 + OFFSET, sobol.at(1023, dimension), 0);
    }

    /**
     * Discrepancy in the mean square from the origin (Warnock's formula) of 256 points in two dimensions:
     * scipy.stats.qmc.discrepancy(…, method='L2-star') says 0.0033074703678 for the sequence as it is, and 0.0223 for
     * random points, the mean of 20 seeds.
     */
    @Test
    void discrepancy() {
        assertEquals(0.0033074703678, discrepancy(SobolPoints.plain(2)), 1e-9);
        double random = IntStream.range(0, 20).mapToDouble(s -> discrepancy(new RandomPoints(s, 2))).average()
                .orElseThrow();
        assertEquals(0.0223, random, 0.005);
        double hypercube = IntStream.range(0, 20).mapToDouble(s -> discrepancy(new LatinHypercube(s, 256, 2))).average()
                .orElseThrow();
        double scrambled = IntStream.range(0, 20).mapToDouble(s -> discrepancy(SobolPoints.scrambled(s, 2))).average()
                .orElseThrow();
        assertTrue(scrambled < hypercube / 2 && hypercube < random, scrambled + " " + hypercube + " " + random);
        assertTrue(scrambled < 0.005, "scrambled: " + scrambled);
    }

    private static double discrepancy(UnitPoints points) {
        int count = 256;
        double single = 0;
        double pairs = 0;
        for (int i = 0; i < count; i++) {
            double product = 1;
            for (int d = 0; d < 2; d++) {
                product *= 1 - points.at(i, d) * points.at(i, d);
            }
            single += product;
            for (int j = 0; j < count; j++) {
                pairs += (1 - Math.max(points.at(i, 0), points.at(j, 0))) * (1 - Math.max(points.at(i, 1),
                        points.at(j, 1)));
            }
        }
        return Math.sqrt(1.0 / 9 - single / 2 / count + pairs / count / count);
    }

    /**
     * Four inputs with the targets of a matrix (invented): every pair of a sample of 5000, correlated or not, comes
     * within 0.02 of its target, whether the sample is a Latin hypercube or a scrambled sequence.
     */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void rankCorrelations(long seed) {
        List<RankCorrelation> targets = List.of(new RankCorrelation(0, 1, 0.7), new RankCorrelation(0, 2, -0.4),
                new RankCorrelation(1, 2, -0.2), new RankCorrelation(2, 3, 0.5));
        List<String> names = List.of("diesel", "power", "grant", "mileage");
        for (UnitPoints sample : List.of(new LatinHypercube(seed, 5000, 4), SobolPoints.scrambled(seed, 4))) {
            CorrelatedPoints points = CorrelatedPoints.of(sample, 5000, names, targets);
            for (int i = 0; i < 4; i++) {
                for (int j = 0; j < i; j++) {
                    assertEquals(target(targets, j, i), Ranks.correlation(column(points, j), column(points, i)), 0.02);
                }
            }
        }
    }

    private static double target(List<RankCorrelation> targets, int first, int second) {
        return targets.stream().filter(t -> t.first() == first && t.second() == second)
                .mapToDouble(RankCorrelation::target)
                .findFirst().orElse(0);
    }

    private static double[] column(UnitPoints points, int dimension) {
        return IntStream.range(0, 5000).mapToDouble(d -> points.at(d, dimension)).toArray();
    }

    /** scipy.stats.binomtest(hits, draws).proportion_ci(0.95, method='wilson'). */
    @ParameterizedTest
    @CsvSource({"0,20,0,0.16112515805281935", "8,10,0.4901624715366418,0.9433178485456248",
        "500,1000,0.4690696003681042,0.5309303996318958"})
    void wilson(int hits, int draws, double low, double high) {
        assertEquals(low, new Chance(hits, draws).band(0.95).low(), 1e-14);
        assertEquals(high, new Chance(hits, draws).band(0.95).high(), 1e-14);
    }
}
