package org.amberyard.charts;

import java.util.Arrays;
import java.util.List;
import org.amberyard.core.variants.AllTogether;
import org.amberyard.core.variants.WhatIfResults;
import org.amberyard.core.whatif.Convergence;
import org.amberyard.core.whatif.RunEnd;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;

/** How the mean saving of a plan settles as draws are added, with its standard error to both sides. */
final class ConvergenceChart {
    private static final String NAME = "what_if_convergence";
    private static final String TITLE = "How the mean settles";
    private static final int HEIGHT = 380;

    private final ComparedPlans plans;
    private final AllTogether run;
    private final List<Convergence> course;
    private final ChartTheme theme;

    private ConvergenceChart(ComparedPlans plans, AllTogether run, ChartTheme theme) {
        this.plans = plans;
        this.run = run;
        this.course = run.convergence(plans.plan()).stream().filter(c -> !Double.isNaN(c.standardError())).toList();
        this.theme = theme;
    }

    static Chart of(WhatIfResults results, int plan, ChartTheme theme) {
        if (results.all().isEmpty()) {
            return ChartFrame.none(NAME, TITLE, "Not worked out yet", HEIGHT, theme);
        }
        ConvergenceChart build = new ConvergenceChart(new ComparedPlans(results, plan), results.all().get(), theme);
        if (build.course.isEmpty()) {
            return ChartFrame.none(NAME, TITLE, "Too few draws yet", HEIGHT, theme);
        }
        return new Chart(NAME, TITLE, build.chart(), build.caption(), build.data(), HEIGHT, ChartFrame.LEAST_HEIGHT, Subjects.NONE);
    }

    private JFreeChart chart() {
        NumberAxis draws = ChartFrame.valueAxis("Draws", Figures.pattern("#,##0"), theme);
        double reach = course.stream().mapToDouble(c -> Math.abs(c.mean()) + c.standardError()).max().orElseThrow();
        NumberAxis saving = ChartFrame.valueAxis("Mean saving (" + StatedMoney.present(plans.base().input()) + ")",
                MoneyTickFormat.reaching(reach), theme);
        saving.setAutoRangeIncludesZero(false);
        XYPlot plot = new XYPlot(null, draws, saving, null);
        ChartFrame.style(plot, theme);
        plot.setRangeZeroBaselineVisible(false);
        BandLines lines = new BandLines(theme);
        lines.add("mean", course.stream().map(c -> new BandLines.Point(c.draws(), c.mean(), c.mean() - c.standardError(),
                c.mean() + c.standardError())).toList(), theme.plan(1), theme.passes(true), true);
        lines.addTo(plot);
        LegendItemCollection legend = new LegendItemCollection();
        legend.add(ChartFrame.line("mean saving so far", theme.planStroke(0), theme.plan(1)));
        legend.add(ChartFrame.swatch("one standard error to both sides", theme.passes(true)));
        plot.setFixedLegendItems(legend);
        return ChartFrame.around(plot, TITLE, caption(), theme);
    }

    private String caption() {
        Convergence last = course.get(course.size() - 1);
        String end = run.end().reason() == RunEnd.Reason.ENOUGH ? " The draws were enough." : "";
        return "“" + plans.name() + "” on the mean of " + plans.draws(last.draws()) + ", " + plans.saving(last.mean())
                + ", give or take " + plans.money(last.standardError()) + " (standard error)." + end
                + plans.fitted(run.missed().savings().get(plans.plan()));
    }

    private ChartData data() {
        String money = " (" + plans.currency() + ")";
        return new ChartData(List.of("Draws", "Mean saving" + money, "Standard error" + money),
                course.stream().map(c -> Arrays.<Object>asList(c.draws(), c.mean(), c.standardError())).toList());
    }
}
