package org.amberyard.charts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.amberyard.core.plan.PlanDifference;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.data.category.DefaultCategoryDataset;

/** From the present cost of one plan, such as the baseline, to that of another, category by category. */
public final class PlanWaterfallChart {
    private static final String NAME = "plan_waterfall";
    private static final String TITLE = "From plan to plan";
    private static final String SERIES = "Present cost";
    private static final int HEIGHT_AROUND = 130;
    private static final int HEIGHT_PER_BAR = 34;
    private static final int LEAST_AROUND = 110;
    private static final int LEAST_PER_BAR = 20;
    private static final float LABEL_SHARE = 0.35f;

    private final StudyResult result;
    private final int from;
    private final int plan;
    private final PlanDifference difference;
    private final ChartTheme theme;

    private PlanWaterfallChart(StudyResult result, int from, int plan, ChartTheme theme) {
        this.result = result;
        this.from = from;
        this.plan = plan;
        this.difference = PlanDifference.of(result.plans().get(from), result.plans().get(plan));
        this.theme = theme;
    }

    /** The chart of two plans by their places; it says so where they are the same. Money has no unit system. */
    public static Chart of(StudyResult result, int from, int plan, UnitSystem system, ChartTheme theme) {
        if (plan == from) {
            return ChartFrame.none(NAME, TITLE, "“" + result.plans().get(plan).name()
                    + "” is compared with itself; choose another plan.", HEIGHT_AROUND, theme);
        }
        PlanWaterfallChart build = new PlanWaterfallChart(result, from, plan, theme);
        int bars = build.difference.steps().size() + 2;
        Subject behind = new Subject(Subject.Kind.PLAN, plan);
        return new Chart(NAME, TITLE, build.chart(), build.sentences(), build.data(), HEIGHT_AROUND + HEIGHT_PER_BAR * bars,
                LEAST_AROUND + LEAST_PER_BAR * bars, entity -> Optional.of(behind));
    }

    private JFreeChart chart() {
        CategoryPlot plot = WaterfallBars.ofMoney(dataset(), categoryAxis(), "Present cost (" + currency() + ")",
                Math.max(difference.from(), difference.to()), this::tip, theme);
        return ChartFrame.around(plot, TITLE, caption(), theme);
    }

    private String tip(int column, double amount) {
        return dataset().getColumnKey(column) + ": " + Figures.exactMoney(currency(), amount);
    }

    private String currency() {
        return result.input().currency();
    }

    private String name() {
        return result.plans().get(plan).name();
    }

    private String fromName() {
        return result.plans().get(from).name();
    }

    /** The renderer takes the last bar for the sum of the others. */
    private DefaultCategoryDataset dataset() {
        DefaultCategoryDataset dataset = new DefaultCategoryDataset();
        dataset.addValue(difference.from(), SERIES, fromName());
        difference.steps().forEach(s -> dataset.addValue(s.change(), SERIES, s.category().label()));
        dataset.addValue(difference.to(), SERIES, name().equals(fromName()) ? name() + " " : name());
        return dataset;
    }

    private static CategoryAxis wide(CategoryAxis axis) {
        axis.setMaximumCategoryLabelWidthRatio(LABEL_SHARE);
        return axis;
    }

    private CategoryAxis categoryAxis() {
        return wide(WaterfallBars.causeAxis(theme));
    }

    private String caption() {
        double change = difference.to() - difference.from();
        return "“" + name() + "” costs " + Figures.money(currency(), Math.abs(change)) + (change < 0 ? " less" : " more")
                + " in present money than “" + fromName() + "”. " + largest();
    }

    private String largest() {
        Comparator<PlanDifference.Step> bySize = Comparator.comparingDouble(PlanDifference.Step::change);
        Optional<PlanDifference.Step> dearest = difference.steps().stream().max(bySize).filter(s -> s.change() > 0);
        Optional<PlanDifference.Step> saving = difference.steps().stream().min(bySize).filter(s -> s.change() < 0);
        return dearest.map(s -> "Most is added by " + s.category().label().toLowerCase(Locale.ROOT) + ", "
                + Figures.money(currency(), s.change()) + ". ").orElse("")
                + saving.map(s -> "Most is saved by " + s.category().label().toLowerCase(Locale.ROOT) + ", "
                        + Figures.money(currency(), -s.change()) + ".").orElse("");
    }

    private String sentences() {
        StringBuilder text = new StringBuilder(caption());
        difference.steps().forEach(s -> text.append(" ").append(s.category().label()).append(" ")
                .append(Figures.exactMoney(currency(), s.change())).append(";"));
        return text.toString();
    }

    private ChartData data() {
        List<List<Object>> rows = new ArrayList<>();
        rows.add(List.of(fromName(), difference.from()));
        difference.steps().forEach(s -> rows.add(List.of(s.category().label(), s.change())));
        rows.add(List.of(name(), difference.to()));
        return new ChartData(List.of("Step", "Present cost (" + currency() + ")"), rows);
    }
}
