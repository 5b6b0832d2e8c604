package org.amberyard.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.CostGroups;
import org.amberyard.core.money.DiscountFactor;
import org.amberyard.core.money.MoneyRules;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.why.Derivation;

/** How sums of a plan's ledger come about: from the present cost over categories and years to the cell of a bus. */
final class LedgerWhy {
    private final StudyResult result;
    private final PlanResult plan;

    LedgerWhy(StudyResult result, PlanResult plan) {
        this.result = result;
        this.plan = plan;
    }

    /** Present cost: what each category comes to. */
    Derivation presentCost() {
        return sum("present cost of " + plan.name(), Arrays.stream(CostCategory.values())
                .filter(c -> plan.ledger().presentValue(c) != 0).map(this::presentCost).toList());
    }

    /** Present value of one category: its years. */
    Derivation presentCost(CostCategory category) {
        MoneyRules rules = plan.ledger().rules();
        List<Derivation> years = new ArrayList<>();
        for (int year = 0; year < plan.ledger().years(); year++) {
            if (plan.ledger().amount(year, category) != 0) {
                double time = rules.time(category, year);
                double rate = rules.rates().rateFor(rules.basis());
                years.add(Derivation.product("present value", Derivation.MONEY, ofYear(year, category),
                        DiscountFactor.whySingle(rate, time)));
            }
        }
        return sum(category.label() + ", present value", years);
    }

    /** A category of a year: its rows. */
    Derivation ofYear(int year, CostCategory category) {
        return sum(category.label() + " in " + calendar(year), IntStream.range(0, plan.ledger().rows().size())
                .filter(row -> plan.ledger().amount(row, year, category) != 0).mapToObj(row -> ofRow(row, year, category)).toList());
    }

    /** A group of a bus or the yard in a year: its categories. */
    Derivation ofRow(int row, int year, CostCategory.Group group) {
        return sum(group.label() + " of " + plan.ledger().rows().get(row) + " in " + calendar(year),
                CostGroups.categories(group).stream().filter(c -> plan.ledger().amount(row, year, c) != 0)
                        .map(c -> ofRow(row, year, c)).toList());
    }

    private Derivation ofRow(int row, int year, CostCategory category) {
        Derivation cell = plan.costs().why(row, year, category);
        return new Derivation(category.label() + " of " + plan.ledger().rows().get(row) + " in " + calendar(year) + ": "
                + cell.name(), cell.value(), cell.unit(), cell.rule(), cell.parts(), cell.input());
    }

    /** A group of a year: its categories. */
    Derivation ofYear(int year, CostCategory.Group group) {
        return sum(group.label() + " in " + calendar(year), CostGroups.categories(group).stream()
                .filter(c -> plan.ledger().amount(year, c) != 0).map(c -> ofYear(year, c)).toList());
    }

    private static Derivation sum(String name, List<Derivation> parts) {
        return Derivation.sum(name, Derivation.MONEY, parts);
    }

    private String calendar(int year) {
        return result.input().money().fiscal().name(result.input().baseYear() + year);
    }
}
