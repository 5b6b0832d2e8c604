package org.amberyard.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.amberyard.core.consumption.ConsumptionCurve;
import org.amberyard.core.consumption.CurveFit;
import org.amberyard.core.consumption.FitSettings;
import org.amberyard.core.consumption.LogEntry;
import org.amberyard.core.units.UnitSystem;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.xy.XYDataset;
import org.junit.jupiter.api.Test;

/** Logs that a curve says to the last digit, but for one that takes a tenth more; invented. */
class CurveFitChartTest {
    private static final ConsumptionCurve CURVE = new ConsumptionCurve(0.8, 18, 0.005, 0.4, 25, 22, 0.5, 6);
    private static final int OFF = 4;
    private static final CurveFit FIT = (CurveFit) CurveFit.of(IntStream.range(0, 12).mapToObj(CurveFitChartTest::log).toList(),
            new FitSettings(18, 22, 25, 6, OptionalDouble.empty()));

    private static LogEntry log(int place) {
        double outsideC = -16 + 4 * place;
        double hours = place % 2 == 0 ? 4 : 8;
        return new LogEntry(100, hours, CURVE.totalKwh(100, hours, outsideC) * (place == OFF ? 1.1 : 1), outsideC);
    }

    private static XYPlot plot(Optional<ConsumptionCurve> before, UnitSystem system) {
        return (XYPlot) CurveFitChart.of("Bus", FIT, before, system, ChartTheme.light()).chart().getPlot();
    }

    @Test
    void aStickLeadsFromEachLogToTheCurve() {
        XYDataset sticks = plot(Optional.empty(), UnitSystem.METRIC).getDataset(1);
        assertEquals(12, sticks.getSeriesCount());
        assertEquals(0, sticks.getXValue(OFF, 0), 1e-9);
        assertEquals(FIT.residuals().get(OFF).entry().kwhPerKm(), sticks.getYValue(OFF, 0), 1e-9);
        assertEquals(FIT.residuals().get(OFF).fittedKwh() / 100, sticks.getYValue(OFF, 1), 1e-9);
    }

    /** 1,200 km in 72 h; at 0 °C the line has the energy of that speed. */
    @Test
    void curvesAreDrawnAtTheMeanSpeedOfTheLogs() {
        assertEquals(1200 / 72.0, FIT.meanSpeedKmh().orElseThrow(), 1e-9);
        XYDataset lines = plot(Optional.of(CURVE), UnitSystem.METRIC).getDataset(0);
        assertEquals(101, lines.getItemCount(0));
        assertEquals(CURVE.kwhPerKm(1200 / 72.0, -16), lines.getYValue(0, 0), 1e-9);
        assertEquals(FIT.curve().kwhPerKm(1200 / 72.0, 28), lines.getYValue(1, 100), 1e-9);
        assertEquals(0, plot(Optional.empty(), UnitSystem.METRIC).getDataset(0).getItemCount(0), "no curve so far");
    }

    @Test
    void figuresAndWordsAreInTheUnitsShown() {
        Chart chart = CurveFitChart.of("Bus", FIT, Optional.of(CURVE), UnitSystem.US, ChartTheme.dark());
        assertEquals(List.of("Outside temperature (°F)", "Measured (kWh/mi)", "By the curve (kWh/mi)", "Difference (%)"), chart.data().columns());
        assertEquals(32.0, (double) chart.data().rows().get(OFF).get(0), 1e-9);
        assertTrue(chart.textAlternative().startsWith("Bus, 12 logs; curves at their mean speed of 10 mph. The farthest off, 32 °F: measured "),
                chart.textAlternative());
        assertEquals(4, ((XYPlot) chart.chart().getPlot()).getFixedLegendItems().getItemCount());
        assertTrue(ChartExport.svg(chart, 600, 300).contains("<desc>"));
    }
}
