package org.amberyard.charts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.tariff.BillLine;
import org.amberyard.core.units.MonthNames;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.core.yard.YardDetail;
import org.amberyard.core.yard.YardYear;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.data.category.DefaultCategoryDataset;

/** A month's electric bill line by line, each bar starting where the last one ends. */
public final class BillWaterfallChart {
    private static final String NAME = "electric_bill";
    private static final String TITLE = "Electric bill of a month";
    private static final String TOTAL = "Total";
    private static final String BUILDING = "Building alone";
    private static final int HEIGHT_AROUND = 130;
    private static final int HEIGHT_PER_BAR = 36;
    private static final int LEAST_AROUND = 110;
    private static final int LEAST_PER_BAR = 22;
    private static final float LABEL_SHARE = 0.45f;
    private static final int MOST_BUSES = 5;

    private final StudyResult result;
    private final int plan;
    private final int year;
    private final int month;
    private final YardYear yard;
    private final YardDetail detail;
    private final BillSteps bill;
    private final ChartTheme theme;

    private BillWaterfallChart(StudyResult result, int plan, int year, int month, YardLoads loads, ChartTheme theme) {
        this.result = result;
        this.plan = plan;
        this.year = year;
        this.month = month;
        this.yard = YardDay.yard(result, plan, year);
        this.detail = new YardDetail(yard, loads.of(yard.input()));
        this.bill = BillSteps.of(yard, month);
        this.theme = theme;
    }

    /** The chart of a month of a plan's year; it says so where no bus is electric. Money has no unit system. */
    public static Chart of(StudyResult result, int plan, int year, int month, YardLoads loads, UnitSystem system,
            ChartTheme theme) {
        Subject behind = new Subject(Subject.Kind.PLAN, plan);
        if (YardDay.yard(result, plan, year).input().buses().isEmpty()) {
            return ChartFrame.none(NAME, TITLE, YardDay.withoutBuses(result, plan, year), HEIGHT_AROUND, theme);
        }
        BillWaterfallChart build = new BillWaterfallChart(result, plan, year, month, loads, theme);
        int bars = build.dataset().getColumnCount();
        return new Chart(NAME, TITLE, build.chart(), build.sentences(), build.data(), HEIGHT_AROUND + HEIGHT_PER_BAR * bars,
                LEAST_AROUND + LEAST_PER_BAR * bars, entity -> Optional.of(behind));
    }

    private JFreeChart chart() {
        CategoryPlot plot = WaterfallBars.ofMoney(dataset(), lineAxis(), "Bill (" + currency() + ", at today's tariff)",
                bill.total(), this::tip, theme);
        return ChartFrame.around(plot, TITLE, caption(), theme);
    }

    private String tip(int column, double amount) {
        int step = column - (bill.building().isPresent() ? 1 : 0);
        if (step < 0 || step >= bill.shown().size()) {
            return dataset().getColumnKey(column) + ": " + Figures.exactMoney(currency(), amount);
        }
        BillSteps.Step shown = bill.shown().get(step);
        return shown.label() + ": " + shown.detail() + ": " + Figures.exactMoney(currency(), amount)
                + drawing(shown).map(w -> "\n" + w).orElse("");
    }

    private String currency() {
        return result.input().currency();
    }

    /** The renderer takes the last bar for the sum of the others. */
    private DefaultCategoryDataset dataset() {
        DefaultCategoryDataset dataset = new DefaultCategoryDataset();
        bill.building().ifPresent(b -> dataset.addValue(b, TOTAL, BUILDING));
        bill.shown().forEach(s -> dataset.addValue(s.amount(), TOTAL, s.label() + ": " + s.price()));
        dataset.addValue(bill.total(), TOTAL, TOTAL);
        return dataset;
    }

    private CategoryAxis lineAxis() {
        CategoryAxis axis = WaterfallBars.causeAxis(theme);
        axis.setMaximumCategoryLabelWidthRatio(LABEL_SHARE);
        axis.setMaximumCategoryLabelLines(2);
        return axis;
    }

    private String heading() {
        return "Plan “" + result.plans().get(plan).name() + "”, " + MonthNames.full(month) + " "
                + (result.input().baseYear() + year) + ", tariff " + yard.input().metering().tariff().name() + ", year "
                + yard.input().contractYear() + " of service, charged " + yard.input().rule().policy().label();
    }

    private String caption() {
        String sum = bill.building().map(b -> Figures.exactMoney(currency(), bill.total()) + ", of which charging adds "
                + Figures.exactMoney(currency(), bill.total() - b)).orElse(Figures.exactMoney(currency(), bill.total()));
        double kwh = yard.months().get(month).yardKwh();
        return heading() + ": " + sum + " for " + Figures.whole(kwh) + " kWh of charging, heat and ports"
                + (kwh > 0 ? " (" + Figures.pattern("0.000").format(forCharging() / kwh) + " per kWh)" : "") + ". " + demand();
    }

    private double forCharging() {
        return bill.total() - bill.building().orElse(0.0);
    }

    /** What sets the dearest demand. */
    private String demand() {
        return yard.bills().bills().get(month).lines().stream().filter(BillSteps::onDemand)
                .max(Comparator.comparingDouble(BillLine::amount))
                .map(l -> l.label() + ": " + l.demand().orElseThrow().explanation() + drawing(l)).orElse("No demand is paid for.");
    }

    private String drawing(BillLine line) {
        return line.demand().orElseThrow().peak().map(p -> "; " + detail.at(p).words(MOST_BUSES) + ".").orElse(".");
    }

    /** Who drew when the demand of a step was set. */
    private Optional<String> drawing(BillSteps.Step step) {
        return step.peak().map(p -> detail.at(p).words());
    }

    private String sentences() {
        String building = bill.building().map(b -> " The building alone would pay " + Figures.exactMoney(currency(), b) + ".")
                .orElse("");
        return caption() + building + " Lines: " + bill.shown().stream().map(s -> s.label() + " ("
                + s.detail() + drawing(s).map(w -> "; " + w).orElse("") + ") " + Figures.exactMoney(currency(), s.amount())).collect(Collectors.joining("; "))
                + ".";
    }

    private ChartData data() {
        List<List<Object>> rows = new ArrayList<>();
        bill.building().ifPresent(b -> rows.add(List.of(BUILDING, "", b, "")));
        bill.steps().forEach(s -> rows.add(List.of(s.label(), s.detail(), s.amount(),
                drawing(s).orElse(""))));
        rows.add(List.of(TOTAL, "", bill.total(), ""));
        return new ChartData(List.of("Line", "Quantity and price", "Amount (" + currency() + ")", "Who drew when it was set"), rows);
    }
}
