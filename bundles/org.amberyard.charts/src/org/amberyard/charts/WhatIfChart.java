package org.amberyard.charts;

import java.util.Arrays;
import java.util.List;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.core.variants.WhatIfResults;

/** The charts of a what-if, in the order in which they answer questions. A chart of what is not worked out yet says so. */
public enum WhatIfChart {
    /** Inputs one at a time. */
    TORNADO("One at a time", TornadoChart::of),
    /** Spread of the saving. */
    DISTRIBUTION("All together", SavingDistributionChart::of),
    /** What decides. */
    SHARES("What decides", VarianceSharesChart::of),
    /** Two inputs together. */
    GRID("Two inputs", TwoInputsChart::of),
    /** Where plans cost the same along each input by itself. */
    ALONE("What would have to be true", BreakEvensAloneChart::of),
    /** Where plans cost the same along one input, for values of another. */
    BREAK_EVEN("Break-even", BreakEvenChart::of),
    /** The same over two others. */
    SURFACE("Break-even over two inputs", BreakEvenSurfaceChart::of),
    /** Named scenarios. */
    SCENARIOS("Scenarios", ScenarioChart::of),
    /** What must be appropriated. */
    BUDGET("Budget at risk", AppropriationFanChart::of),
    /** What is spent up to each year. */
    SPENT("Spent by year", SpentFanChart::ofPlan),
    /** The same less that of the baseline. */
    SPENT_MORE("Spent more by year", SpentFanChart::ofDifference),
    /** Prices that vary. */
    PRICES("Prices as drawn", PriceFansChart::of),
    /** What a plan costs more than the cheapest of a draw. */
    REGRET("Regret", RegretChart::of),
    /** How the mean settles. */
    CONVERGENCE("How the mean settles", ConvergenceChart::of);

    @FunctionalInterface
    private interface Maker {
        Chart of(WhatIfResults results, int plan, ChartTheme theme);
    }

    /** Makes a chart whose figures hang on the units of the user. */
    @FunctionalInterface
    private interface UnitMaker {
        Chart of(WhatIfResults results, int plan, UnitSystem units, ChartTheme theme);
    }

    private final String label;
    private final UnitMaker maker;

    WhatIfChart(String label, Maker maker) {
        this(label, (results, plan, units, theme) -> maker.of(results, plan, theme));
    }

    WhatIfChart(String label, UnitMaker maker) {
        this.label = label;
        this.maker = maker;
    }

    /** Short name for buttons and lists. */
    public String label() {
        return label;
    }

    /** The chart of a plan by its place in the study. */
    public Chart of(WhatIfResults results, int plan, UnitSystem units, ChartTheme theme) {
        return maker.of(results, plan, units, theme);
    }

    /** All charts of the first plan that is compared with the baseline. */
    public static List<Chart> all(WhatIfResults results, UnitSystem units, ChartTheme theme) {
        int plan = FirstPlan.of(results.base());
        return Arrays.stream(values()).map(chart -> chart.of(results, plan, units, theme)).toList();
    }
}
