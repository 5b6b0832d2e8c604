package org.amberyard.report.papers;

import java.math.BigDecimal;
import java.util.List;
import org.amberyard.core.money.MoneyBasis;
import org.amberyard.core.plan.ProjectCost;
import org.amberyard.report.document.CellFormat;
import org.amberyard.report.document.DataTable;
import org.amberyard.report.document.TableBuilder;
import org.amberyard.report.papers.ProjectMoney.Line;

/**
 * The way from the budget, in money of the years of purchase, to the cost that a ton less is paid for. Each step is rounded once;
 * the change of money takes what is left, so that the printed steps add up to the printed end.
 */
final class ProjectBridge {
    /** Which money the cost of a ton counts, for footnotes. */
    static final String MONEY = """
            New buses, ports, works, training and tools as they are first bought, in the money that the study states, not \
            discounted, without renewals, less what the baseline buys for its yard too and less what programmes take back. \
            Table T8b shows the way there from the budget of T4 and T5.""";

    private final PaperInput in;
    private final ProjectMoney money;
    private final ProjectCost cost;

    /** A step on the way. */
    private record Step(String what, BigDecimal capital, BigDecimal grant) {
        private Step minus(Step other, String name) {
            return new Step(name, capital.subtract(other.capital), grant.subtract(other.grant));
        }

        private Step plus(Step other) {
            return new Step(what, capital.add(other.capital), grant.add(other.grant));
        }
    }

    private ProjectBridge(PaperInput in) {
        this.in = in;
        this.money = ProjectMoney.of(in);
        this.cost = ProjectCost.of(in.result(), in.plan(), in.replaced());
    }

    static DataTable of(PaperInput in) {
        return new TableBuilder<Step>("T8b", "T8b. From the budget to the cost of a ton").text("Step", 4, Step::what)
                .sum("Capital", in.currency(), CellFormat.MONEY, s -> s.capital().doubleValue())
                .sum("Grants", in.currency(), CellFormat.MONEY, s -> s.grant().doubleValue())
                .sums("Total: the costs of table T8a. Steps are rounded once, the change of money with the rounding of the "
                        + "budget's lines takes what is left.")
                .of(new ProjectBridge(in).steps());
    }

    private List<Step> steps() {
        Step budget = new Step("Budget as in T4 and T5, money of the years of purchase", money.total(),
                money.total().subtract(money.own()));
        Step back = step("Awards that programmes take back or withhold", 0, -takenBack());
        Step baseline = step("Bought for the yard in “" + in.result().baseline().name() + "” too", cost.takenOff().capital(),
                cost.takenOff().grant());
        Step end = step("End", cost.capital(), cost.grant());
        return List.of(budget, back, end.minus(budget.plus(back).plus(baseline), change()), baseline);
    }

    private static Step step(String what, double capital, double grant) {
        return new Step(what, CellFormat.MONEY.rounded(capital), CellFormat.MONEY.rounded(grant));
    }

    private double takenBack() {
        return money.lines().stream().map(Line::funded).mapToDouble(in.plan().funding()::takenBack).sum();
    }

    private String change() {
        return in.study().money().basis() == MoneyBasis.NOMINAL ? "Rounding of the budget's lines"
                : "General inflation from the start of " + in.calendar(0) + " to the years of purchase, taken out";
    }
}
