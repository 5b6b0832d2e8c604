package org.amberyard.report;

import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.amberyard.charts.AnnualCostChart;
import org.amberyard.charts.BillWaterfallChart;
import org.amberyard.charts.BudgetChart;
import org.amberyard.charts.ChargeThroughDayChart;
import org.amberyard.charts.Chart;
import org.amberyard.charts.ChartExport;
import org.amberyard.charts.ChartTheme;
import org.amberyard.charts.ConsumptionTemperatureChart;
import org.amberyard.charts.CumulativeCostChart;
import org.amberyard.charts.DayLoadChart;
import org.amberyard.charts.EmissionsChart;
import org.amberyard.charts.EnergyWaterfallChart;
import org.amberyard.charts.FirstElectricRoute;
import org.amberyard.charts.FirstPlan;
import org.amberyard.charts.FleetMixChart;
import org.amberyard.charts.PackCapacityChart;
import org.amberyard.charts.PlanWaterfallChart;
import org.amberyard.charts.PolicyCostChart;
import org.amberyard.charts.PortCountChart;
import org.amberyard.charts.PortOccupancyChart;
import org.amberyard.charts.RangeHeatMap;
import org.amberyard.charts.RangeMarginChart;
import org.amberyard.charts.ServiceLoadChart;
import org.amberyard.charts.ShopHoursChart;
import org.amberyard.charts.UpkeepCauseChart;
import org.amberyard.charts.WhatIfChart;
import org.amberyard.charts.YardDay;
import org.amberyard.charts.YardLoads;
import org.amberyard.core.air.Pollutant;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.core.variants.WhatIfResults;

/**
 * Writes all results into a folder: results.json, a CSV file for each table and for the inputs that they were computed from,
 * and each chart as PNG, SVG and text. Charts of a single route are those of the first electric route of the first plan that
 * is compared with the baseline; without such a route they are left out. Charts of a
 * yard are those of the first plan that is electric at the end: its last year, the month of the highest bill.
 *
 * <p>Everything is written under temporary names first and then moved into place, so that a failure leaves the previous
 * results as they were. Files of other names are never touched.
 */
public final class ResultFolder {
    private static final int CHART_WIDTH = 900;
    private static final double CHART_SCALE = 2;

    private ResultFolder() {
    }

    /**
     * Writes a result into a folder, which is made when it is not there.
     *
     * @param inputs the {@link InputRegister} of the study that the result was computed from
     * @return the files in the order written
     */
    public static List<Path> write(StudyResult result, ResultTable inputs, UnitSystem system, Path folder)
            throws IOException {
        return write(result, inputs, system, folder, Progress.NONE);
    }

    /**
     * The same.
     *
     * @param progress hears of it; nothing is changed in the folder when it throws
     */
    public static List<Path> write(StudyResult result, ResultTable inputs, UnitSystem system, Path folder, Progress progress)
            throws IOException {
        List<ResultTable> tables = ResultTables.of(result, system, progress);
        Files.createDirectories(folder);
        try (StagedFiles files = new StagedFiles(folder)) {
            try (Writer out = Files.newBufferedWriter(files.add("results.json"), StandardCharsets.UTF_8)) {
                ResultsJson.write(result, system, tables, out);
            }
            for (ResultTable table : tables) {
                write(table, files);
            }
            write(inputs, files);
            for (Chart chart : charts(result, system)) {
                write(chart, files);
            }
            return files.moveIntoPlace();
        }
    }

    /**
     * Writes what a what-if has found into a folder, which is made when it is not there: its tables, and its charts of the first
     * plan that is compared with the baseline.
     *
     * @param more tables beside those of the results
     * @param system units of prices
     * @return the files in the order written
     */
    public static List<Path> write(WhatIfResults results, List<ResultTable> more, UnitSystem system, Path folder) throws IOException {
        Files.createDirectories(folder);
        try (StagedFiles files = new StagedFiles(folder)) {
            for (ResultTable table : more) {
                write(table, files);
            }
            for (ResultTable table : WhatIfTables.of(results, system)) {
                write(table, files);
            }
            for (Chart chart : WhatIfChart.all(results, system, ChartTheme.light())) {
                write(chart, files);
            }
            return files.moveIntoPlace();
        }
    }

    private static List<Chart> charts(StudyResult result, UnitSystem system) {
        ChartTheme theme = ChartTheme.light();
        List<Chart> charts = new ArrayList<>();
        charts.add(AnnualCostChart.of(result, system, theme));
        charts.add(CumulativeCostChart.of(result, system, theme));
        for (Pollutant pollutant : List.of(Pollutant.CO2E, Pollutant.NOX, Pollutant.PM25)) {
            charts.add(EmissionsChart.of(result, pollutant, system, theme));
        }
        charts.add(RangeMarginChart.of(result, system, theme));
        charts.add(RangeHeatMap.of(result, system, theme));
        int plan = FirstPlan.of(result);
        charts.add(PlanWaterfallChart.of(result, result.input().baseline(), plan, system, theme));
        charts.add(BudgetChart.of(result, plan, system, theme));
        charts.add(FleetMixChart.of(result, plan, system, theme));
        charts.add(UpkeepCauseChart.of(result, plan, system, theme));
        charts.add(ShopHoursChart.of(result, plan, system, theme));
        FirstElectricRoute.of(result).ifPresent(first -> addRoute(charts, result, first, system));
        YardDay.first(result).ifPresent(day -> addYard(charts, result, day, system));
        return charts;
    }

    private static void addYard(List<Chart> charts, StudyResult result, YardDay day, UnitSystem system) {
        ChartTheme theme = ChartTheme.light();
        YardLoads loads = new YardLoads();
        charts.add(DayLoadChart.of(result, day, loads, system, theme));
        charts.add(PortOccupancyChart.of(result, day, loads, system, theme));
        charts.add(BillWaterfallChart.of(result, day.plan(), day.year(), day.month(), loads, system, theme));
        charts.add(ServiceLoadChart.of(result, day.plan(), system, theme));
        charts.add(PolicyCostChart.of(result, day.plan(), day.year(), system, theme));
        charts.add(PortCountChart.of(result, day.plan(), Progress.NONE, system, theme));
    }

    private static void addRoute(List<Chart> charts, StudyResult result, FirstElectricRoute first, UnitSystem system) {
        ChartTheme theme = ChartTheme.light();
        charts.add(ConsumptionTemperatureChart.of(result, first.route(), system, theme));
        charts.add(PackCapacityChart.of(result, first.plan(), OptionalInt.empty(), theme));
        charts.add(EnergyWaterfallChart.of(result, first.route(), first.type(), system, theme));
        first.day().ifPresent(day -> charts.add(ChargeThroughDayChart.of(result, first.plan(), day, system, theme)));
    }

    private static void write(ResultTable table, StagedFiles files) throws IOException {
        Files.writeString(files.add(table.name() + ".csv"), CsvTables.document(table), StandardCharsets.UTF_8);
    }

    private static void write(Chart chart, StagedFiles files) throws IOException {
        int height = chart.preferredHeight();
        ChartExport.png(chart, files.add(chart.name() + ".png"), CHART_WIDTH, height, CHART_SCALE);
        ChartExport.svg(chart, files.add(chart.name() + ".svg"), CHART_WIDTH, height);
        Files.writeString(files.add(chart.name() + ".txt"), chart.textAlternative() + "\n", StandardCharsets.UTF_8);
    }
}
