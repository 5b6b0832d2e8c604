package org.amberyard.report.papers;

import java.math.BigDecimal;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.amberyard.core.funding.FundedLine;
import org.amberyard.core.plan.BudgetYear;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.report.document.CellFormat;
import org.amberyard.report.document.DataTable;
import org.amberyard.report.document.TableBuilder;

/**
 * What must be appropriated by year, as printed. Purchases and their awards are those of the justification tables, rounded there
 * one by one, so that their totals are the same in every document; what is paid at another time than the purchase, such as an
 * award that comes late, is rounded by itself.
 */
final class Appropriations {
    private static final String EACH = "Purchases and their awards are rounded one by one, as in the justification tables; every "
            + "other amount is rounded by itself. Totals, down and across, are sums of the printed amounts.";

    private final PaperInput in;
    private final PlanResult plan;

    /** A part of a year's budget, as printed. */
    private record Part(String label, ToDoubleFunction<BudgetYear> amount) {
    }

    private Appropriations(PaperInput in, PlanResult plan) {
        this.in = in;
        this.plan = plan;
    }

    static DataTable of(PaperInput in, String title) {
        Appropriations ours = new Appropriations(in, in.plan());
        Appropriations theirs = new Appropriations(in, in.result().baseline());
        String baseline = in.result().baseline().name();
        TableBuilder<Integer> table = new TableBuilder<Integer>("Budget", title).year("Year", y -> OptionalInt.of(in.calendar(y)));
        List<Integer> years = IntStream.range(0, in.study().years()).boxed().toList();
        ours.parts().stream().filter(p -> years.stream().anyMatch(y -> p.amount().applyAsDouble(ours.budget(y)) != 0))
                .forEach(p -> table.sum(p.label(), "", CellFormat.MONEY, y -> p.amount().applyAsDouble(ours.budget(y))));
        table.sum("To appropriate", "", CellFormat.MONEY, ours::appropriated)
                .sum("“" + baseline + "”", "", CellFormat.MONEY, theirs::appropriated)
                .sum("More than that", "", CellFormat.MONEY, y -> ours.appropriated(y) - theirs.appropriated(y))
                .sums(EACH);
        AwardCertainty.of(in).caveat().ifPresent(c -> table.note("Not all awards are certain: see “What to decide”."));
        return table.of(years);
    }

    private List<Part> parts() {
        return List.of(new Part("Purchases", this::purchases), new Part("Grants, credits, aid", this::funding),
                whole("Bus sales", BudgetYear::sales), whole("Borrowed", BudgetYear::borrowed),
                whole("Debt service", BudgetYear::debtService), whole("Running costs", BudgetYear::running),
                whole("Income tax", BudgetYear::taxes));
    }

    private BudgetYear budget(int year) {
        return plan.finance().budget().get(year);
    }

    private double appropriated(int year) {
        return parts().stream().mapToDouble(p -> p.amount().applyAsDouble(budget(year))).sum();
    }

    private List<ProjectMoney.Line> bought(int year) {
        return plan.funding().awards().lines().stream().filter(l -> l.purchase().year() == year)
                .map(l -> ProjectMoney.printed(in, l)).toList();
    }

    private double purchases(BudgetYear year) {
        return together(bought(year.year()), ProjectMoney.Line::cost, l -> l.purchase().cost(), year.purchases());
    }

    private double funding(BudgetYear year) {
        return -together(bought(year.year()), l -> l.cost().subtract(l.own()), FundedLine::funded, -year.funding());
    }

    /** Sum of what is printed of the lines, and what a year's amount holds beside them. */
    private static double together(List<ProjectMoney.Line> lines, Function<ProjectMoney.Line, BigDecimal> printed,
            ToDoubleFunction<FundedLine> exact, double amount) {
        BigDecimal sum = lines.stream().map(printed).reduce(BigDecimal.ZERO, BigDecimal::add);
        double rest = amount - lines.stream().map(ProjectMoney.Line::funded).mapToDouble(exact).sum();
        return sum.add(CellFormat.MONEY.rounded(rest)).doubleValue();
    }

    private static Part whole(String label, ToDoubleFunction<BudgetYear> amount) {
        return new Part(label, y -> CellFormat.MONEY.rounded(amount.applyAsDouble(y)).doubleValue());
    }
}
