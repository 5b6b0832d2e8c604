package org.amberyard.charts;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.amberyard.core.variants.AllTogether;
import org.amberyard.core.variants.WhatIfResults;
import org.amberyard.core.whatif.Miss;
import org.amberyard.core.whatif.SortedDraws;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.DefaultXYDataset;

/** What each plan costs more than the cheapest plan of a draw: how often it is more than so much, and how often nothing. */
final class RegretChart {
    private static final String NAME = "what_if_regret";
    private static final String TITLE = "Regret";
    private static final int HEIGHT = 440;
    private static final int STEPS = 200;
    private static final int[] PERCENTILES = {50, 75, 90, 95};

    private final ComparedPlans plans;
    private final AllTogether run;
    private final List<SortedDraws> regrets;
    private final ChartTheme theme;

    private RegretChart(ComparedPlans plans, AllTogether run, ChartTheme theme) {
        this.plans = plans;
        this.run = run;
        this.regrets = IntStream.range(0, plans.base().plans().size()).mapToObj(run::regret).toList();
        this.theme = theme;
    }

    static Chart of(WhatIfResults results, int plan, ChartTheme theme) {
        if (results.all().isEmpty()) {
            return ChartFrame.none(NAME, TITLE, "Not worked out yet", HEIGHT, theme);
        }
        RegretChart build = new RegretChart(new ComparedPlans(results, plan), results.all().get(), theme);
        return new Chart(NAME, TITLE, build.chart(), build.sentences(), build.data(), HEIGHT, ChartFrame.LEAST_HEIGHT, Subjects.NONE);
    }

    private JFreeChart chart() {
        DefaultXYDataset data = new DefaultXYDataset();
        XYLineAndShapeRenderer lines = new XYLineAndShapeRenderer(true, false);
        LegendItemCollection legend = new LegendItemCollection();
        for (int plan = 0; plan < regrets.size(); plan++) {
            data.addSeries((Integer) plan, curve(plan));
            lines.setSeriesPaint(plan, theme.plan(plan));
            lines.setSeriesStroke(plan, theme.planStroke(plan));
            legend.add(ChartFrame.line(name(plan) + ": cheapest in " + Figures.wholePercent(best(plan)), theme.planStroke(plan), theme.plan(plan)));
        }
        lines.setDefaultToolTipGenerator((d, plan, item) -> name(plan) + ": more than " + plans.money(d.getXValue(plan, item))
                + " above the cheapest in " + Figures.percent(d.getYValue(plan, item)) + " of the draws");
        NumberAxis share = ChartFrame.valueAxis("Draws with more regret", Figures.pattern("0 %"), theme);
        share.setRange(0, 1);
        double most = regrets.stream().mapToDouble(r -> r.quantile(1)).max().orElse(0);
        XYPlot plot = new XYPlot(data, ChartFrame.valueAxis("Regret: cost above the cheapest plan of the draw (" + StatedMoney.present(
                plans.base().input()) + ")", MoneyTickFormat.reaching(most), theme), share, lines);
        ChartFrame.style(plot, theme);
        plot.setFixedLegendItems(legend);
        return ChartFrame.around(plot, TITLE, caption(), theme);
    }

    private double[][] curve(int plan) {
        List<SortedDraws.Exceedance> curve = regrets.get(plan).exceedance(Math.min(STEPS, regrets.get(plan).count()));
        return new double[][] {curve.stream().mapToDouble(SortedDraws.Exceedance::value).toArray(),
            curve.stream().mapToDouble(e -> regrets.get((int) plan).exceeded(e.value())).toArray()};
    }

    private double best(int plan) {
        return run.plans().best(plan).share();
    }

    private double mean(int plan) {
        return Arrays.stream(run.plans().regret(plan)).average().orElse(0);
    }

    private String name(int plan) {
        return plans.base().plans().get(plan).name();
    }

    private String caption() {
        int least = IntStream.range(0, regrets.size()).boxed().min((a, b) -> Double.compare(mean(a), mean(b))).orElseThrow();
        Miss missed = run.missed().savings().stream().max(Comparator.comparingDouble(Miss::within)).orElse(Miss.NONE);
        if (mean(least) == 0) {
            return "“" + name(least) + "” is the cheapest plan in every draw." + plans.fitted(missed);
        }
        return "“" + name(least) + "” is regretted least: on average it costs " + plans.money(mean(least))
                + " more than the cheapest plan of a draw, one draw in twenty " + plans.money(regrets.get(least).quantile(0.95)) + " or more."
                + plans.fitted(missed);
    }

    private String sentences() {
        return caption() + " " + IntStream.range(0, regrets.size()).mapToObj(p -> "“" + name(p) + "” is the cheapest in "
                + Figures.wholePercent(best(p)) + " of the draws, mean regret " + plans.money(mean(p)) + ".").collect(Collectors.joining(" "));
    }

    private ChartData data() {
        String money = " (" + plans.currency() + ")";
        List<String> headers = new ArrayList<>(List.of("Plan", "Cheapest of all (%)", "Mean regret" + money));
        IntStream.of(PERCENTILES).forEach(p -> headers.add("P" + p + money));
        return new ChartData(headers, IntStream.range(0, regrets.size()).mapToObj(plan -> {
            List<Object> row = new ArrayList<>(List.of(name(plan), 100 * best(plan), mean(plan)));
            IntStream.of(PERCENTILES).forEach(p -> row.add(regrets.get(plan).quantile(p / 100.0)));
            return row;
        }).toList());
    }
}
