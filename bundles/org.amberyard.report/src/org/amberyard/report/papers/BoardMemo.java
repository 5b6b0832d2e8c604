package org.amberyard.report.papers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.amberyard.charts.ChartTheme;
import org.amberyard.charts.CumulativeCostChart;
import org.amberyard.charts.Figures;
import org.amberyard.core.plan.BudgetYear;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.units.Unit;
import org.amberyard.report.Cautions;
import org.amberyard.report.Headline;
import org.amberyard.report.document.Block;
import org.amberyard.report.document.CellFormat;
import org.amberyard.report.document.Document;
import org.amberyard.report.document.Section;
import org.amberyard.report.document.TableBuilder;

/** The memo to the board, two pages: question, answer, what to decide, money by year, risks. */
final class BoardMemo {
    private static final String TITLE = "Memo to the board";
    /** Height over width: low enough for the first page. */
    private static final double FIRST_CHART_HEIGHT = 0.36;
    private final PaperInput in;

    private BoardMemo(PaperInput in) {
        this.in = in;
    }

    static Document of(PaperInput in) {
        BoardMemo memo = new BoardMemo(in);
        return new Document("board-memo", TITLE, in.study().name(), in.factsInShort(), in.running(TITLE), "",
                List.of(memo.question(), memo.answer(), BoardDecision.of(in), memo.money(), memo.risks(), cautions())).close();
    }

    private Section question() {
        String description = in.facts().description();
        return Section.of("", new Block.Paragraph(description.isEmpty()
                ? "Should the fleet go electric as the plan “" + in.plan().name() + "” has it, and what does it cost beside “"
                        + in.result().baseline().name() + "”?"
                : description));
    }

    private Section answer() {
        List<Block> blocks = new ArrayList<>();
        Optional<Headline> headline = Headline.of(in.result(), in.system()).stream().filter(h -> h.plan() == in.planIndex())
                .findFirst();
        headline.ifPresentOrElse(h -> blocks.addAll(List.of(new Block.Paragraph(h.cost(), true),
                new Block.Paragraph(h.routes() + " " + h.service()))),
                () -> blocks.add(new Block.Paragraph("“" + in.plan().name()
                        + "” is the plan that the others are compared with.", true)));
        blocks.addAll(List.of(alternatives(), new Block.Figure(CumulativeCostChart.of(in.result(), in.system(), ChartTheme.light()),
                "Figure 1. Cumulative cost of the plans",
                FIRST_CHART_HEIGHT)));
        return new Section("The answer", false, false, blocks);
    }

    private Block alternatives() {
        return Block.Condensed.close(new TableBuilder<PlanResult>("Plans", "Table 1. The plans side by side").text("Plan", 2.4, PlanResult::name)
                .number("Present cost", in.currency(), CellFormat.MONEY, p -> p.measures().presentCost())
                .number("Above “" + in.result().baseline().name() + "”", in.currency(), CellFormat.MONEY,
                        p -> p.measures().presentCost() - in.result().baseline().measures().presentCost())
                .number("A year, level", in.currency(), CellFormat.MONEY, p -> p.measures().annualEquivalent())
                .number("Fuel", in.symbol(Unit.LITRE), CellFormat.WHOLE, p -> in.shown(Unit.LITRE, p.measures().fuelL()))
                .number("Greenhouse gas", "t CO2e", CellFormat.WHOLE, p -> p.measures().co2eKg() / 1000)
                .note(in.moneyWords() + " What is left at the end is credited. Each figure is rounded by itself. "
                        + in.facts().assumptions().words())
                .of(in.result().plans()));
    }

    private Section money() {
        return Section.of("Money by year", new Block.Paragraph("What must be appropriated in each fiscal year, in money of the year, from "
                + "all sources; money that comes in is negative. " + reconciled()),
                Block.Condensed.close(Appropriations.of(in, "Table 2. To be appropriated, " + in.currency())),
                Block.Condensed.close(ReplacementYears.of(in, "Table 3. Which buses come when, and in which places")));
    }

    /** Both tables say “more”, of sums that are not the same. */
    private String reconciled() {
        if (in.plan() == in.result().baseline()) {
            return "";
        }
        double present = in.plan().measures().presentCost() - in.result().baseline().measures().presentCost();
        double owed = in.plan().finance().budget().stream().mapToDouble(BudgetYear::appropriation).sum()
                - in.result().baseline().finance().budget().stream().mapToDouble(BudgetYear::appropriation).sum();
        return "The " + in.currency() + " " + CellFormat.MONEY.print(CellFormat.MONEY.rounded(Math.abs(present))) + (present < 0 ? " below “" : " above “")
                + in.result().baseline().name() + "” in table 1 are discounted and credit what is left at the end; the last column of table 2 adds up "
                + "to about " + Figures.money(in.currency(), owed) + " because it does neither.";
    }

    private Section risks() {
        List<String> points = RiskPapers.all(in).stream().map(RiskPapers.Risk::sentence).toList();
        return new Section("Risks", false, false, List.of(new Block.Bullets(points)));
    }

    private static Section cautions() {
        return Section.of("", new Block.Caution(Cautions.inShort() + " Methods and inputs: see the consultant's appendix."));
    }
}
