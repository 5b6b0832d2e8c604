package org.amberyard.report.papers;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import org.amberyard.core.funding.Purchase;
import org.amberyard.core.why.Derivation;
import org.amberyard.report.document.CellFormat;
import org.amberyard.report.document.DataTable;
import org.amberyard.report.document.TableBuilder;
import org.amberyard.report.papers.ProjectMoney.Column;
import org.amberyard.report.papers.ProjectMoney.Line;

/** Tables of what the project costs and who pays it. */
final class BudgetPapers {
    private final PaperInput in;
    private final ProjectMoney money;

    private BudgetPapers(PaperInput in) {
        this.in = in;
        this.money = ProjectMoney.of(in);
    }

    static List<DataTable> infrastructure(PaperInput in) {
        return List.of(new BudgetPapers(in).infrastructure());
    }

    static List<DataTable> summary(PaperInput in) {
        BudgetPapers papers = new BudgetPapers(in);
        return List.of(papers.byActivity(), papers.byClass());
    }

    static List<DataTable> narrative(PaperInput in) {
        return List.of(new BudgetPapers(in).narrative());
    }

    private DataTable infrastructure() {
        List<Line> lines = money.lines().stream().filter(l -> l.funded().purchase().kind() != Purchase.Kind.BUS).toList();
        Optional<AppliedProgramme> applied = AppliedProgramme.of(in);
        return new TableBuilder<Line>("T3", "T3. Ports, works, training and tools")
                .year("Year", l -> OptionalInt.of(in.calendar(l.funded().purchase().year())))
                .text("Item", 2.6, l -> l.funded().purchase().name())
                .text("Category, by its name", 1.9, l -> WorkCategory.of(l.funded().purchase()).label())
                .number("Quantity", "", CellFormat.WHOLE, l -> l.funded().purchase().count())
                .number("Unit cost", in.currency(), CellFormat.CENTS, l -> l.funded().purchase().cost() / l.funded().purchase()
                        .count())
                .sum("Total", in.currency(), CellFormat.MONEY, l -> l.cost().doubleValue())
                .text("Of which", 3.6, l -> parts(l.funded().purchase()))
                .text("Eligible by the rules in the study" + money.programme().map(p -> ": " + p).orElse(""), 3.6, l -> applied
                        .map(a -> a.verdictWithRules(l.funded())).orElse(""))
                .toFill("Category of the notice", 0.6).toFill("Meter side", 0.6)
                .toFill("Safety listing", 0.6).toFill("Quote", 0.6).note(ProjectMoney.PRICES).sums(ProjectMoney.ROUNDING).of(lines);
    }

    private String parts(Purchase purchase) {
        if (purchase.parts().size() < 2) {
            return "";
        }
        List<String> words = new ArrayList<>();
        for (int i = 0; i < purchase.parts().size(); i++) {
            Derivation part = purchase.parts().get(i);
            words.add((i == 0 ? "hardware " : "installation ") + cents(part.value() / purchase.count()));
        }
        return String.join(", ", words) + " each";
    }

    private static String cents(double amount) {
        return CellFormat.CENTS.print(CellFormat.CENTS.rounded(amount));
    }

    /** A row of a budget. */
    private record Row(String name, Predicate<Line> which) {
    }

    private DataTable byActivity() {
        List<Row> rows = new ArrayList<>();
        for (Purchase.Kind kind : Purchase.Kind.values()) {
            rows.add(new Row(switch (kind) {
                case BUS -> "New buses";
                case PORTS -> "Charging ports, installed";
                case SITE_WORK -> "Site works";
                case TRAINING -> "Training and tools";
            }, l -> l.funded().purchase().kind() == kind));
        }
        return budget("T4a", "T4a. Budget by activity", "Activity", rows).sums(ProjectMoney.ROUNDING).of(rows);
    }

    private DataTable byClass() {
        List<Row> rows = List.of(
                new Row("Equipment: buses and ports", l -> l.funded().purchase().kind() == Purchase.Kind.BUS
                        || l.funded().purchase().kind() == Purchase.Kind.PORTS),
                new Row("Construction: site works", l -> l.funded().purchase().kind() == Purchase.Kind.SITE_WORK),
                new Row("Other: training and tools", l -> l.funded().purchase().kind() == Purchase.Kind.TRAINING));
        return budget("T4b", "T4b. Budget by object class", "Object class", rows)
                .note("The study holds no personnel, fringe benefits, travel, supplies, contracts or indirect costs; add them "
                        + "where the project has them. Ports stand with their installation, which table T3 shows apart.")
                .sums(ProjectMoney.ROUNDING).of(rows);
    }

    private TableBuilder<Row> budget(String name, String title, String first, List<Row> rows) {
        String requested = money.programme().map(p -> "Requested: " + p).orElse("Requested");
        TableBuilder<Row> table = new TableBuilder<Row>(name, title).text(first, 2.2, Row::name);
        column(table, requested, Column.REQUESTED);
        column(table, "Other federal", Column.OTHER_FEDERAL);
        column(table, "Other state", Column.STATE);
        column(table, "Utility", Column.UTILITY);
        column(table, "Local programmes", Column.LOCAL);
        column(table, "Tax credits", Column.TAX_CREDIT);
        column(table, "Match, own cash", Column.OWN);
        return table.toFill("Match, in kind").checkedSum("Total", in.currency(), CellFormat.MONEY, r -> money.lines().stream()
                .filter(r.which()).map(Line::cost).reduce(BigDecimal.ZERO, BigDecimal::add).doubleValue(), money.unroundedTotal())
                .check(money.balances() ? "Check, unrounded: balances" : "Check, unrounded: does not balance")
                .note("Check: costs and sources as the results have them, each summed unrounded. It balances when the sources "
                        + "come to the costs and no printed total is further off than rounding.");
    }

    private void column(TableBuilder<Row> table, String label, Column column) {
        table.checkedSum(label, in.currency(), CellFormat.MONEY, r -> money.amount(column, r.which()).doubleValue(),
                money.unrounded(column));
    }

    private DataTable narrative() {
        return new TableBuilder<Line>("T11", "T11. Budget in words").text("Line", 4, this::sentence).toFill("Quote and its date",
                1.4)
                .note(ProjectMoney.ROUNDING).of(money.lines());
    }

    private String sentence(Line line) {
        Purchase purchase = line.funded().purchase();
        String cost = in.currency() + " " + CellFormat.MONEY.print(line.cost());
        String amount = purchase.count() > 1 ? purchase.count() + " at " + in.currency() + " "
                + cents(purchase.cost() / purchase.count()) + " make " + cost : cost;
        String paid = line.programmeWords();
        return in.calendar(purchase.year()) + ": " + purchase.name() + ", " + amount + ". "
                + (paid.isEmpty() ? "Own money alone." : "Paid by " + paid + "; own money " + CellFormat.MONEY.print(line.own())
                        + ".");
    }
}
