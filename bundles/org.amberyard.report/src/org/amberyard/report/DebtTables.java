package org.amberyard.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.amberyard.core.finance.Bond;
import org.amberyard.core.finance.DebtSchedule.Payment;
import org.amberyard.core.finance.Lease;
import org.amberyard.core.plan.Debt;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.Unit;
import org.amberyard.core.why.Derivation;

/** Tables of the debts of plans: each on a row, and payment by payment. */
final class DebtTables {
    private DebtTables() {
    }

    /** A debt of a plan. */
    record OfDebt(StudyResult result, PlanResult plan, Debt debt) {
        static List<OfDebt> all(StudyResult result) {
            List<OfDebt> rows = new ArrayList<>();
            result.plans().forEach(p -> p.finance().debts().forEach(d -> rows.add(new OfDebt(result, p, d))));
            return rows;
        }

        String kind() {
            if (debt.financing().terms() instanceof Lease) {
                return "lease";
            }
            return debt.financing().terms() instanceof Bond ? "bond" : "loan";
        }

        Optional<Derivation> payment() {
            return debt.financing().terms().whyPayment(debt.drawn());
        }

        int calendar(int yearOfDebt) {
            return result.input().baseYear() + debt.year() + yearOfDebt;
        }
    }

    /** A payment on a debt. */
    record OfPayment(OfDebt at, int number, Payment payment) {
        static List<OfPayment> all(StudyResult result) {
            List<OfPayment> rows = new ArrayList<>();
            for (OfDebt debt : OfDebt.all(result)) {
                List<Payment> payments = debt.debt().schedule().payments();
                for (int i = 0; i < payments.size(); i++) {
                    rows.add(new OfPayment(debt, i + 1, payments.get(i)));
                }
            }
            return rows;
        }
    }

    static TableDefinition<OfDebt> debts() {
        return new TableDefinition<>("debts", "Loans, leases and bonds", OfDebt::all)
                .text("plan", "Plan", "Name of the plan.", r -> r.plan().name())
                .text("financing", "Financing", "Name of the financing.", r -> r.debt().financing().name())
                .text("kind", "Kind", "Loan, lease or bond.", OfDebt::kind)
                .year("year", "Drawn in", "Year at whose start it is drawn; all amounts are in money of the time of payment.",
                        r -> r.calendar(0))
                .heads()
                .money("sum", "Sum", "Money drawn, or price of what is leased: the share financed of the year's purchases less "
                        + "awards.", r -> r.debt().schedule().proceeds())
                .why(r -> r.debt().drawn())
                .money("fee", "Fee", "Fee or cost of the issue, paid when it is drawn.", r -> r.debt().schedule().fee())
                .count("payments_per_year", "Payments per year", "Payments in a year.",
                        r -> r.debt().schedule().paymentsPerYear())
                .number("period_rate", "Rate of a period", Unit.SHARE, "Interest from one payment to the next.",
                        r -> r.debt().schedule().periodRate())
                .optionalMoney("payment", "Level payment", "Payment that stays the same; no figure where payments differ.",
                        r -> r.payment().map(p -> OptionalDouble.of(p.value())).orElse(OptionalDouble.empty()))
                .why(r -> r.payment().orElseGet(() -> Derivation.of("Level payment", Double.NaN, "", "payments differ")))
                .year("last_year", "Repaid in", "Year of the last payment.", r -> r.calendar(r.debt().schedule().years() - 1))
                .money("interest", "Interest", "All interest until it is repaid.", r -> r.debt().schedule().interest())
                .money("owed_at_end", "Owed at the end", "Owed at the end of the study, less its sinking fund.",
                        r -> r.debt().owedAtEndOf(r.result().input().years() - 1));
    }

    static TableDefinition<OfPayment> payments() {
        return new TableDefinition<>("debt_payments", "Loans, leases and bonds payment by payment", OfPayment::all)
                .text("plan", "Plan", "Name of the plan.", r -> r.at().plan().name())
                .text("financing", "Financing", "Name of the financing.", r -> r.at().debt().financing().name())
                .year("drawn", "Drawn in", "Year at whose start the debt is drawn.", r -> r.at().calendar(0))
                .count("number", "Payment", "Number of the payment, 1 for the first; a buy-out comes last.", OfPayment::number).heads()
                .year("year", "Year", "Fiscal year to which it belongs; one at the end of a year belongs to that year.",
                        r -> r.at().calendar(r.payment().year()))
                .number("time", "After", Unit.YEAR, "Time from the drawing to the payment.", r -> r.payment().timeYears())
                .money("interest", "Interest", "Interest since the payment before.", r -> r.payment().interest())
                .money("principal", "Principal", "Principal repaid.", r -> r.payment().principal())
                .money("deposit", "Sinking fund", "Paid into the sinking fund; negative where the fund pays.",
                        r -> r.payment().deposit())
                .money("paid", "Paid", "Interest, principal and deposit together.", r -> r.payment().paid())
                .money("balance", "Balance", "Principal owed after it; zero after the last.", r -> r.payment().balance())
                .money("fund", "In the fund", "Sinking fund after it.", r -> r.payment().fund());
    }
}
