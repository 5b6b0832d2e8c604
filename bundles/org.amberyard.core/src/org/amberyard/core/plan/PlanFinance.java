package org.amberyard.core.plan;

import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.finance.FinanceLedger;
import org.amberyard.core.money.NominalCosts;

/**
 * How a plan is paid for: its debts, what they and taxes add to its costs, and the budget of each year. The ledger of costs
 * stays the view of cash purchases.
 *
 * @param debts debts in the order of the plan's financing, then by year
 * @param ledger what financing and taxes add, by year
 * @param depreciation tax depreciation by year, money of the purchases; zero for an operator that is not taxed
 * @param budget what must be appropriated, by year
 */
public record PlanFinance(List<Debt> debts, FinanceLedger ledger, List<Double> depreciation, List<BudgetYear> budget) {

    public PlanFinance {
        debts = List.copyOf(debts);
        depreciation = List.copyOf(depreciation);
        budget = List.copyOf(budget);
    }

    static PlanFinance of(StudyInput study, PlanInput plan, FleetHistory fleet, PlanCosts costs) {
        NominalCosts nominal = new NominalCosts(costs.ledger());
        NetPurchases net = new NetPurchases(nominal, costs.funding());
        PlanDebts planDebts = new PlanDebts(study, net);
        List<Debt> debts = planDebts.of(plan);
        FinanceLedger.Builder builder = new FinanceLedger.Builder(study.years(), study.money().rates());
        debts.forEach(debt -> planDebts.add(debt, builder));
        List<Double> depreciation = Collections.nCopies(study.years(), 0.0);
        if (study.rules().taxes().rate() > 0) {
            TaxBooks books = new TaxBooks(study, fleet, net);
            new PlanTaxes(study, net, books, debts).add(builder);
            depreciation = IntStream.range(0, study.years()).mapToObj(books::depreciation).toList();
        }
        FinanceLedger ledger = builder.build();
        return new PlanFinance(debts, ledger, depreciation, IntStream.range(0, study.years())
                .mapToObj(y -> BudgetYear.of(nominal, ledger, y, plan.payment().yearlyCap())).toList());
    }

    /** Owed at the end of a year of the study on all debts, sinking funds taken off. */
    public double owedAtEndOf(int year) {
        return debts.stream().mapToDouble(debt -> debt.owedAtEndOf(year)).sum();
    }
}
