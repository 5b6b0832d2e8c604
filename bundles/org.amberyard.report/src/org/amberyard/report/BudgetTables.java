package org.amberyard.report;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.amberyard.core.finance.FinanceLine;
import org.amberyard.core.plan.BudgetYear;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.report.ResultRows.OfYear;

/** Tables of what must be appropriated and of what financing and taxes add, year by year in money of the year. */
final class BudgetTables {
    private BudgetTables() {
    }

    static TableDefinition<OfYear> budgetByYear() {
        TableDefinition<OfYear> table = new TableDefinition<>("budget_by_year", "Budget by fiscal year", OfYear::all)
                .text("plan", "Plan", "Name of the plan.", r -> r.plan().name())
                .year("year", "Year", "Fiscal year; all amounts are in money of the year, whatever the study states.",
                        OfYear::calendarYear)
                .heads();
        part(table, "purchases", "Purchases", "Buses, packs, ports, site works, training and tools at their price.",
                BudgetYear::purchases);
        part(table, "funding", "Funding", "Awards received, credits and aid, negative, less awards paid back.",
                BudgetYear::funding);
        part(table, "sales", "Bus sales", "Buses sold, negative.", BudgetYear::sales);
        part(table, "borrowed", "Borrowed", "Money drawn and price of what is leased, negative.", BudgetYear::borrowed);
        part(table, "debt_service", "Debt service", "Fees, interest, principal, lease payments and sinking funds.",
                BudgetYear::debtService);
        part(table, "running", "Running costs", "Energy, upkeep and fees.", BudgetYear::running);
        part(table, "taxes", "Income tax", "Tax of a taxed operator; negative where deductions save it.", BudgetYear::taxes);
        part(table, "appropriation", "To appropriate", "Sum of the columns before.", BudgetYear::appropriation);
        table.why(r -> budget(r).whyAppropriation());
        return table.optionalMoney("cap", "Cap", "Most that may be appropriated in a year; no figure without a limit.",
                r -> budget(r).cap())
                .optionalMoney("above_cap", "Above the cap", "By how much the year is above the cap; zero within it.",
                        r -> budget(r).aboveCap())
                .text("is_above", "Above", "Whether the year is above the cap: yes or no; empty without one.",
                        r -> above(budget(r).aboveCap()));
    }

    private static void part(TableDefinition<OfYear> table, String name, String label, String meaning,
            ToDoubleFunction<BudgetYear> amount) {
        table.money(name, label, meaning, r -> amount.applyAsDouble(budget(r)));
    }

    private static BudgetYear budget(OfYear row) {
        return row.plan().finance().budget().get(row.year());
    }

    private static String above(OptionalDouble above) {
        return above.isEmpty() ? null : above.getAsDouble() > 0 ? "yes" : "no";
    }

    static TableDefinition<OfYear> financing() {
        TableDefinition<OfYear> table = new TableDefinition<>("financing", "Financing and taxes by fiscal year",
                BudgetTables::financedYears)
                .text("plan", "Plan", "Name of the plan; plans that are paid in cash by an operator without tax have no rows.",
                        r -> r.plan().name())
                .year("year", "Year", "Fiscal year; all amounts are in money of the year, whatever the study states.",
                        OfYear::calendarYear)
                .heads();
        line(table, "borrowed", FinanceLine.BORROWED, "Money drawn and price of what is leased, negative.");
        line(table, "fees", FinanceLine.FEES, "Fees and costs of issues.");
        line(table, "interest", FinanceLine.INTEREST, "Interest of loans and coupons of bonds.");
        line(table, "principal", FinanceLine.PRINCIPAL, "Principal of loans and bonds repaid.");
        line(table, "lease_payments", FinanceLine.LEASE_PAYMENTS, "Payments of leases, buy-outs included.");
        line(table, "sinking_fund", FinanceLine.SINKING_FUND,
                "Deposits into sinking funds; negative where a fund repays a bond.");
        return table.money("owed", "Owed", "Owed at the end of the year on loans, leases and bonds, less sinking funds; at the "
                + "end of the study it counts as paid.", r -> r.plan().finance().owedAtEndOf(r.year()))
                .money("depreciation", "Tax depreciation", "Written off in the year by a taxed operator.",
                        r -> r.plan().finance().depreciation().get(r.year()))
                .money("taxes", "Income tax", "Tax of the year; negative where deductions save it.",
                        r -> amount(r, FinanceLine.TAXES))
                .money("tax_on_what_is_left", "Tax on what is left",
                        "Tax on what is left at the end of the study, as if it were sold then; no money moves.",
                        r -> amount(r, FinanceLine.TAX_ON_WHAT_IS_LEFT));
    }

    private static void line(TableDefinition<OfYear> table, String name, FinanceLine line, String meaning) {
        table.money(name, line.label(), meaning, r -> amount(r, line));
    }

    private static double amount(OfYear row, FinanceLine line) {
        return row.plan().finance().ledger().amount(row.year(), line);
    }

    private static List<OfYear> financedYears(StudyResult result) {
        boolean taxed = result.input().rules().taxes().rate() > 0;
        return OfYear.all(result).stream().filter(r -> taxed || hasDebts(r.plan())).toList();
    }

    private static boolean hasDebts(PlanResult plan) {
        return !plan.finance().debts().isEmpty();
    }
}
