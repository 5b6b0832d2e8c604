package org.amberyard.core.plan;

import java.util.List;
import org.amberyard.core.finance.FinanceLedger;
import org.amberyard.core.finance.FinanceLine;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.CostGroups;
import org.amberyard.core.money.FlowTime;
import org.amberyard.core.money.NominalCosts;

/**
 * Income tax of a plan by year: running costs, training and tools, depreciation, interest and fees of borrowing are deducted,
 * gains on sales, credits and aid taxed. Awards lower what is written off; paid back or withheld
 * they are deducted. Fees are spread over the years of their debt. The tax of a year falls with its running costs. What is
 * left at the end of the study is taxed as if it were sold then, since the costs take it as sold.
 */
final class PlanTaxes {
    private final StudyInput study;
    private final NetPurchases net;
    private final NominalCosts costs;
    private final TaxBooks books;
    private final List<Debt> debts;

    PlanTaxes(StudyInput study, NetPurchases net, TaxBooks books, List<Debt> debts) {
        this.study = study;
        this.net = net;
        this.costs = net.costs();
        this.books = books;
        this.debts = debts;
    }

    void add(FinanceLedger.Builder ledger) {
        double rate = study.rules().taxes().rate();
        for (int year = 0; year < study.years(); year++) {
            double income = books.gain(year) - deductions(year);
            ledger.add(year, FlowTime.RUNNING.years(year, study.money().midYear()), FinanceLine.TAXES, rate * income);
        }
        int last = study.years() - 1;
        double gainLeft = valueLeft(last) - books.leftAtEnd() - feesLeft();
        ledger.add(last, study.years(), FinanceLine.TAX_ON_WHAT_IS_LEFT, rate * gainLeft);
    }

    private double deductions(int year) {
        double sum = books.depreciation(year) + net.training(year) + costs.amount(year, CostCategory.FUNDING_REPAID) + net.withheld(year);
        for (CostCategory category : CostCategory.values()) {
            boolean running = !CostGroups.investment(category) && category.time() != FlowTime.END;
            sum += running ? costs.amount(year, category) : 0;
        }
        for (Debt debt : debts) {
            sum += debt.feeDeducted(year) + debt.interestDeducted(year);
        }
        return sum;
    }

    private double valueLeft(int last) {
        double value = 0;
        for (CostCategory category : CostCategory.values()) {
            value -= category.time() == FlowTime.END && category != CostCategory.AWARDS_DUE ? costs.amount(last, category) : 0;
        }
        return value;
    }

    /** Fees that have not been deducted by the end of the study. */
    private double feesLeft() {
        double left = 0;
        for (Debt debt : debts) {
            left += debt.schedule().fee();
            for (int year = debt.year(); year < study.years(); year++) {
                left -= debt.feeDeducted(year);
            }
        }
        return left;
    }
}
