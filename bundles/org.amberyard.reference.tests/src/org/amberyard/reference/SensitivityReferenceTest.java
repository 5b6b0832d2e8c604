package org.amberyard.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.whatif.Band;
import org.amberyard.core.whatif.Distribution;
import org.amberyard.core.whatif.DrawRunner;
import org.amberyard.core.whatif.Draws;
import org.amberyard.core.whatif.IndexPlan;
import org.amberyard.core.whatif.KeptDraws;
import org.amberyard.core.whatif.Moments;
import org.amberyard.core.whatif.RandomPoints;
import org.amberyard.core.whatif.RunSettings;
import org.amberyard.core.whatif.SobolIndices;
import org.amberyard.core.whatif.SobolPoints;
import org.amberyard.core.whatif.Uniform;
import org.amberyard.core.whatif.UnitPoints;
import org.junit.jupiter.api.Test;

/** Sobol indices of functions whose indices are known in closed form. */
class SensitivityReferenceTest {
    private static final double A = 7;
    private static final double B = 0.1;
    private static final double[] WEIGHTS = {0, 1, 4.5, 9, 99, 99, 99, 99};

    private static double ishigami(double[] x) {
        return Math.sin(x[0]) + A * Math.sin(x[1]) * Math.sin(x[1]) + B * Math.pow(x[2], 4) * Math.sin(x[0]);
    }

    private static double gFunction(double[] x) {
        return IntStream.range(0, x.length).mapToDouble(i -> (Math.abs(4 * x[i] - 2) + WEIGHTS[i]) / (1 + WEIGHTS[i]))
                .reduce(1, (a, b) -> a * b);
    }

    private static SobolIndices indices(UnitPoints sample, List<Distribution> inputs, int rows,
            ToDoubleFunction<double[]> f) {
        IndexPlan plan = IndexPlan.ofEach(sample);
        Draws draws = new Draws(plan, inputs);
        KeptDraws kept = new KeptDraws();
        DrawRunner.run(RunSettings.of(rows * plan.perRow(), 1000, 1),
                check -> (draw, results) -> results[0] = f.applyAsDouble(draws.at(draw)), kept, Progress.NONE);
        return SobolIndices.of(kept.column(0), plan.groups(), new SobolIndices.Bootstrap(300, 0.95, 1));
    }

    private static List<Distribution> ishigamiInputs() {
        return List.of(new Uniform(-Math.PI, Math.PI), new Uniform(-Math.PI, Math.PI), new Uniform(-Math.PI, Math.PI));
    }

    /**
     * Ishigami and Homma, "An importance quantification technique in uncertainty analysis for computer models", ISUMA
     * 1990, 398–403: f = sin x1 + 7 sin² x2 + 0.1 x3⁴ sin x1 with inputs from −π to π. Its variances in closed form,
     * from memory (also in Saltelli and others, "Global Sensitivity Analysis: The Primer", 2008): V1 = (1 + b π⁴ / 5)²
     * / 2, V2 = a² / 8, V13 = b² π⁸ · 8 / 225.
     */
    @Test
    void ishigamiFunction() {
        double v1 = Math.pow(1 + B * Math.pow(Math.PI, 4) / 5, 2) / 2;
        double v2 = A * A / 8;
        double v13 = B * B * Math.pow(Math.PI, 8) * 8 / 225;
        double whole = v1 + v2 + v13;
        SobolIndices found = indices(SobolPoints.scrambled(1, 6), ishigamiInputs(), 8192,
                SensitivityReferenceTest::ishigami);
        assertAll(new double[] {v1 / whole, v2 / whole, 0}, found.first(), 0.01);
        assertAll(new double[] {(v1 + v13) / whole, v2 / whole, v13 / whole}, found.total(), 0.01);
        assertAll(new double[] {0.3139, 0.4424, 0}, found.first(), 0.01);
        assertAll(new double[] {0.5576, 0.4424, 0.2437}, found.total(), 0.01);
    }

    /**
     * The g-function of Sobol with weights 0, 1, 4.5, 9 and four times 99 (Saltelli and others, "Global Sensitivity
     * Analysis: The Primer", 2008, from memory): an input by itself has the variance Vi = 1 / (3 (1 + ai)²), all have Π
     * (1 + Vi) − 1, and the total of an input is Vi Π (1 + Vj) over the others.
     */
    @Test
    void gFunctionOfSobol() {
        double[] alone = IntStream.range(0, 8).mapToDouble(i -> 1 / (3 * (1 + WEIGHTS[i]) * (1 + WEIGHTS[i])))
                .toArray();
        double product = IntStream.range(0, 8).mapToDouble(i -> 1 + alone[i]).reduce(1, (a, b) -> a * b);
        List<Distribution> inputs = IntStream.range(0, 8).<Distribution>mapToObj(i -> new Uniform(0, 1)).toList();
        SobolIndices found = indices(SobolPoints.scrambled(2, 16), inputs, 8192, SensitivityReferenceTest::gFunction);
        assertAll(IntStream.range(0, 8).mapToDouble(i -> alone[i] / (product - 1)).toArray(), found.first(), 0.01);
        assertAll(IntStream.range(0, 8).mapToDouble(i -> alone[i] * product / (1 + alone[i]) / (product - 1)).toArray(),
                found.total(), 0.01);
        assertEquals(0.716, found.first().get(0).value(), 0.01);
    }

    private static void assertAll(double[] truth, List<Band> found, double tolerance) {
        for (int i = 0; i < truth.length; i++) {
            assertEquals(truth[i], found.get(i).value(), tolerance);
        }
    }

    /**
     * Of 60 random samples the intervals of 95 % hold the total index of the first input in 57 ± 4 deviations, and are as wide as
     * 3.92 deviations of the estimates, a third more or less.
     */
    @Test
    void intervalsHoldTheTruth() {
        double v13 = B * B * Math.pow(Math.PI, 8) * 8 / 225;
        double v1 = Math.pow(1 + B * Math.pow(Math.PI, 4) / 5, 2) / 2;
        double truth = (v1 + v13) / (v1 + v13 + A * A / 8);
        List<Band> found = IntStream.range(0, 60).mapToObj(seed -> indices(new RandomPoints(seed, 6), ishigamiInputs(), 500,
                SensitivityReferenceTest::ishigami).total().get(0)).toList();
        long held = found.stream().filter(band -> band.holds(truth)).count();
        assertTrue(held >= 57 - 4 * Math.sqrt(60 * 0.95 * 0.05), "held " + held);
        double scatter = Moments.of(found.stream().mapToDouble(Band::value).toArray()).sd();
        double width = found.stream().mapToDouble(band -> band.high() - band.low()).average().orElseThrow();
        assertEquals(1, width / (2 * 1.96 * scatter), 0.33);
    }
}
