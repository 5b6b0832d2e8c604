package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.finance.DebtSchedule;
import org.amberyard.core.finance.FinanceLedger;
import org.amberyard.core.finance.FinanceLine;

/** The debts that a plan runs into, and their flows. */
final class PlanDebts {
    /** Less than half a cent is nothing to borrow. */
    private static final double NOTHING = 0.005;

    private final StudyInput study;
    private final NetPurchases net;

    PlanDebts(StudyInput study, NetPurchases net) {
        this.study = study;
        this.net = net;
    }

    /** Debts in the order of the plan's financing, then by year. */
    List<Debt> of(PlanInput plan) {
        List<Debt> debts = new ArrayList<>();
        for (Financing financing : plan.payment().financing()) {
            for (int year = 0; year < study.years(); year++) {
                double amount = financing.paysIn(year) ? financing.share() * covered(financing.covers(), year) : 0;
                if (amount > NOTHING) {
                    debts.add(new Debt(financing, year, financing.terms().schedule(amount)));
                }
            }
        }
        return debts;
    }

    private double covered(Financing.Covers covers, int year) {
        double buses = IntStream.range(0, study.buses().size()).mapToDouble(p -> net.buses(p, year)).sum();
        return (covers.buses() ? buses : 0) + (covers.infrastructure() ? net.infrastructure(year) : 0);
    }

    /** Adds the flows of a debt within the study, and what is owed at its end. */
    void add(Debt debt, FinanceLedger.Builder ledger) {
        DebtSchedule schedule = debt.schedule();
        ledger.add(debt.year(), debt.year(), FinanceLine.BORROWED, -schedule.proceeds());
        ledger.add(debt.year(), debt.year(), FinanceLine.FEES, schedule.fee());
        for (DebtSchedule.Payment payment : schedule.payments()) {
            int year = debt.year() + payment.year();
            double time = debt.year() + payment.timeYears();
            ledger.add(year, time, debt.leased() ? FinanceLine.LEASE_PAYMENTS : FinanceLine.INTEREST, payment.interest());
            ledger.add(year, time, debt.leased() ? FinanceLine.LEASE_PAYMENTS : FinanceLine.PRINCIPAL, payment.principal());
            ledger.add(year, time, FinanceLine.SINKING_FUND, payment.deposit());
        }
        int last = study.years() - 1;
        ledger.add(last, study.years(), FinanceLine.DEBT_LEFT, debt.owedAtEndOf(last));
    }
}
