package org.amberyard.core.consumption;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

class CurveFitPropertyTest {

    @Property(tries = 100)
    void logsWithoutScatterGiveTheCurveBack(@ForAll @DoubleRange(min = 0.4, max = 2) double base,
            @ForAll @DoubleRange(max = 0.02) @Scale(4) double rise, @ForAll @DoubleRange(max = 0.8) double heat,
            @ForAll @DoubleRange(max = 1) double cool) {
        ConsumptionCurve curve = new ConsumptionCurve(base, 18, rise, heat, 50, 22, cool, 20);
        ConsumptionCurve found = fit(SampleLogs.of(curve)).curve();
        assertEquals(base, found.baseKwhPerKm(), 1e-9);
        assertEquals(rise, found.tractionRisePerK(), 1e-9);
        assertEquals(heat, found.heatKwPerK(), 1e-9);
        assertEquals(cool, found.coolKwPerK(), 1e-9);
    }

    @Property(tries = 50)
    void energyScaledScalesTheFit(@ForAll @DoubleRange(min = 0.1, max = 10) double factor) {
        CurveFit once = fit(SampleLogs.scattered());
        CurveFit scaled = fit(SampleLogs.scattered().stream()
                .map(e -> new LogEntry(e.km(), e.hours(), e.energyKwh() * factor, e.outsideC())).toList());
        assertEquals(once.curve().baseKwhPerKm() * factor, scaled.curve().baseKwhPerKm(), 1e-9);
        assertEquals(once.curve().heatKwPerK() * factor, scaled.curve().heatKwPerK(), 1e-9);
        assertEquals(once.curve().tractionRisePerK(), scaled.curve().tractionRisePerK(), 1e-9);
        assertEquals(once.rmsShare(), scaled.rmsShare(), 1e-9);
    }

    @Property(tries = 50)
    void orderOfEntriesDoesNotMatter(@ForAll long seed) {
        List<LogEntry> shuffled = new ArrayList<>(SampleLogs.scattered());
        Collections.shuffle(shuffled, new Random(seed));
        CurveFit expected = fit(SampleLogs.scattered());
        CurveFit found = fit(shuffled);
        assertEquals(expected.curve().baseKwhPerKm(), found.curve().baseKwhPerKm(), 1e-10);
        assertEquals(expected.curve().tractionRisePerK(), found.curve().tractionRisePerK(), 1e-10);
        assertEquals(expected.curve().heatKwPerK(), found.curve().heatKwPerK(), 1e-10);
        assertEquals(expected.rmsShare(), found.rmsShare(), 1e-10);
    }

    /** No curve without negative terms that lies near the fitted one is nearer to the logs. */
    @Property(tries = 100)
    void noNeighbourFitsBetter(@ForAll @DoubleRange(min = -0.05, max = 0.05) double base,
            @ForAll @DoubleRange(max = 0.002) @Scale(4) double rise,
            @ForAll @DoubleRange(min = -0.05, max = 0.05) double heat) {
        List<LogEntry> logs = SampleLogs.withoutRise();
        ConsumptionCurve best = fit(logs).curve();
        ConsumptionCurve other = new ConsumptionCurve(best.baseKwhPerKm() + base, 18, best.tractionRisePerK() + rise,
                best.heatKwPerK() + heat, 50, 22, best.coolKwPerK(), 50);
        double bestSum = weightedSquares(logs, best);
        assertEquals(bestSum, Math.min(bestSum, weightedSquares(logs, other)), 1e-9);
    }

    private static double weightedSquares(List<LogEntry> logs, ConsumptionCurve curve) {
        return logs.stream().mapToDouble(e -> {
            double residualKwh = e.energyKwh() - curve.totalKwh(e.km(), e.hours(), e.outsideC());
            return residualKwh * residualKwh / e.km();
        }).sum();
    }

    private static CurveFit fit(List<LogEntry> logs) {
        return assertInstanceOf(CurveFit.class, CurveFit.of(logs, SampleLogs.settings()));
    }
}
