package org.amberyard.report.papers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.amberyard.charts.BudgetChart;
import org.amberyard.charts.ChartTheme;
import org.amberyard.charts.CumulativeCostChart;
import org.amberyard.core.plan.BudgetYear;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.units.Unit;
import org.amberyard.report.Cautions;
import org.amberyard.report.Headline;
import org.amberyard.report.document.Block;
import org.amberyard.report.document.CellFormat;
import org.amberyard.report.document.DataTable;
import org.amberyard.report.document.Document;
import org.amberyard.report.document.Section;
import org.amberyard.report.document.TableBuilder;

/** The memo to the board: question, answer, money by year, risks, what to decide. */
final class BoardMemo {
    private static final String TITLE = "Memo to the board";
    /** Height over width: low enough for the first page. */
    private static final double FIRST_CHART_HEIGHT = 0.36;
    private static final double CHART_HEIGHT = 0.42;
    private static final String EACH = "Each amount is rounded by itself; totals, down and across, are sums of the printed "
            + "amounts.";

    private final PaperInput in;

    private BoardMemo(PaperInput in) {
        this.in = in;
    }

    static Document of(PaperInput in) {
        BoardMemo memo = new BoardMemo(in);
        return new Document("board-memo", TITLE, in.study().name(), in.documentFacts(), in.running(TITLE), "",
                List.of(memo.question(), memo.answer(), memo.money(), memo.risks(), memo.decisions()));
    }

    private Section question() {
        String description = in.facts().description();
        return Section.of("The question", new Block.Paragraph(description.isEmpty()
                ? "Should the fleet go electric as the plan “" + in.plan().name() + "” has it, and what does it cost beside “"
                        + in.result().baseline().name() + "”?" : description));
    }

    private Section answer() {
        List<Block> blocks = new ArrayList<>();
        Optional<Headline> headline = Headline.of(in.result(), in.system()).stream().filter(h -> h.plan() == in.planIndex())
                .findFirst();
        headline.ifPresentOrElse(h -> blocks.addAll(List.of(new Block.Paragraph(h.cost(), true),
                new Block.Paragraph(h.routes() + " " + h.service()))), () -> blocks.add(new Block.Paragraph("“" + in.plan().name()
                        + "” is the plan that the others are compared with.", true)));
        blocks.addAll(List.of(alternatives(), new Block.Figure(CumulativeCostChart.of(in.result(), in.system(), ChartTheme.light()),
                "Figure 1. Cumulative cost of the plans",
                        FIRST_CHART_HEIGHT)));
        return new Section("The answer", false, false, blocks);
    }

    private DataTable alternatives() {
        return new TableBuilder<PlanResult>("Plans", "Table 1. The plans side by side").text("Plan", 2.4, PlanResult::name)
                .number("Present cost", in.currency(), CellFormat.WHOLE, p -> p.measures().presentCost())
                .number("Above “" + in.result().baseline().name() + "”", in.currency(), CellFormat.WHOLE,
                        p -> p.measures().presentCost() - in.result().baseline().measures().presentCost())
                .number("A year, level", in.currency(), CellFormat.WHOLE, p -> p.measures().annualEquivalent())
                .number("Fuel", in.symbol(Unit.LITRE), CellFormat.WHOLE, p -> in.shown(Unit.LITRE, p.measures().fuelL()))
                .number("Greenhouse gas", "t CO2e", CellFormat.WHOLE, p -> p.measures().co2eKg() / 1000)
                .note(in.moneyWords() + " What is left at the end is credited. Each figure is rounded by itself.").of(in.result()
                .plans());
    }

    private Section money() {
        return new Section("Money by year", false, true, List.of(new Block.Paragraph("What must be appropriated in each fiscal "
                + "year, in money of the year, all sources counted; money that comes in is negative."), budget(),
                new Block.Figure(BudgetChart.of(in.result(), in.planIndex(), in.system(), ChartTheme.light()),
                        "Figure 2. To be appropriated by year, “" + in.plan().name() + "”", CHART_HEIGHT)));
    }

    /** A year with its amounts as printed. */
    private record Year(BudgetYear plan, BudgetYear baseline) {
        static double whole(double amount) {
            return CellFormat.WHOLE.rounded(amount).doubleValue();
        }

        static double appropriated(BudgetYear year) {
            return PARTS.stream().mapToDouble(p -> whole(p.amount().applyAsDouble(year))).sum();
        }
    }

    private record Part(String label, ToDoubleFunction<BudgetYear> amount) {
    }

    private static final List<Part> PARTS = List.of(new Part("Purchases", BudgetYear::purchases), new Part("Grants, credits, aid",
            BudgetYear::funding),
            new Part("Bus sales", BudgetYear::sales), new Part("Borrowed", BudgetYear::borrowed), new Part("Debt service",
            BudgetYear::debtService),
            new Part("Running costs", BudgetYear::running), new Part("Income tax", BudgetYear::taxes));

    private DataTable budget() {
        List<Year> years = IntStream.range(0, in.study().years()).mapToObj(y -> new Year(in.plan().finance().budget().get(y),
                in.result().baseline().finance().budget().get(y))).toList();
        TableBuilder<Year> table = new TableBuilder<Year>("Budget", "Table 2. To be appropriated, " + in.currency())
                .year("Year", y -> OptionalInt.of(in.calendar(y.plan().year())));
        PARTS.stream().filter(p -> years.stream().anyMatch(y -> Year.whole(p.amount().applyAsDouble(y.plan())) != 0))
                .forEach(p -> table.sum(p.label(), "", CellFormat.WHOLE, y -> Year.whole(p.amount().applyAsDouble(y.plan()))));
        return table.sum("To appropriate", "", CellFormat.WHOLE, y -> Year.appropriated(y.plan()))
                .sum("“" + in.result().baseline().name() + "”", "", CellFormat.WHOLE, y -> Year.appropriated(y.baseline()))
                .sum("More than that", "", CellFormat.WHOLE, y -> Year.appropriated(y.plan()) - Year.appropriated(y.baseline()))
                .sums(EACH).of(years);
    }

    private Section risks() {
        List<String> points = RiskPapers.all(in).stream().map(RiskPapers.Risk::sentence).toList();
        return new Section("Risks", false, true, List.of(new Block.Bullets(points)));
    }

    private Section decisions() {
        ProjectMoney money = ProjectMoney.of(in);
        List<String> points = new ArrayList<>();
        points.add("Whether to follow “" + in.plan().name() + "” as its plan of replacement, to be looked at again each year.");
        money.programme().ifPresent(p -> points.add("Whether to apply to “" + p + "” for " + in.currency() + " "
                + CellFormat.WHOLE.print(money.paidBy(p))
                + ", and to commit own money of " + CellFormat.WHOLE.print(money.own()) + " for the project of "
                + CellFormat.WHOLE.print(money.total()) + " (money of the years of purchase)."));
        points.add("Whether the utility is to be asked for service now, before buses are ordered.");
        points.add("Who is responsible, and by when the board hears of it again: ______________________________");
        return new Section("What to decide", false, false, List.of(new Block.Bullets(points), new Block.Caution(Cautions.text())));
    }
}
