package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.finance.DebtSchedule;
import org.amberyard.core.finance.FinanceLedger;
import org.amberyard.core.finance.FinanceLine;
import org.amberyard.core.why.Derivation;
import org.amberyard.core.why.InputRef;

/** The debts that a plan runs into, and their flows. */
final class PlanDebts {
    /** Less than half a cent is nothing to borrow. */
    private static final double NOTHING = 0.005;
    private static final Derivation NONE = Derivation.of("Sum financed", 0, Derivation.MONEY, "not covered in the year");

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
            financing.drawn().ifPresent(d -> debts.add(Debt.of(financing, d.year(), Derivation.input("Sum drawn", d.sum(),
                    Derivation.MONEY, new InputRef("Financing", financing.name(), "drawnSum")))));
            for (int year = 0; year < study.years(); year++) {
                Derivation drawn = financing.paysIn(year) ? drawn(financing, year) : NONE;
                if (drawn.value() > NOTHING) {
                    debts.add(Debt.of(financing, year, drawn));
                }
            }
        }
        return debts;
    }

    private Derivation drawn(Financing financing, int year) {
        List<Derivation> purchases = new ArrayList<>();
        if (financing.covers().buses()) {
            double buses = IntStream.range(0, study.buses().size()).mapToDouble(place -> net.buses(place, year)).sum();
            purchases.add(Derivation.of("Buses less awards", buses, Derivation.MONEY, "bought in the year, money of the year"));
        }
        if (financing.covers().infrastructure()) {
            purchases.add(Derivation.of("Ports and site works less awards", net.infrastructure(year), Derivation.MONEY,
                    "bought in the year, money of the year"));
        }
        return Derivation.product("Sum financed", Derivation.MONEY,
                Derivation.of("Share financed", financing.share(), "share", "of the financing"),
                Derivation.sum("Purchases covered", Derivation.MONEY, purchases));
    }

    /** Adds the flows of a debt within the study, and what is owed at its end. */
    void add(Debt debt, FinanceLedger.Builder ledger) {
        DebtSchedule schedule = debt.schedule();
        if (debt.year() >= 0) {
            ledger.add(debt.year(), debt.year(), FinanceLine.BORROWED, -schedule.proceeds());
            ledger.add(debt.year(), debt.year(), FinanceLine.FEES, schedule.fee());
        }
        for (DebtSchedule.Payment payment : schedule.payments()) {
            int year = debt.year() + payment.year();
            if (year < 0) {
                continue;
            }
            double time = debt.year() + payment.timeYears();
            ledger.add(year, time, debt.leased() ? FinanceLine.LEASE_PAYMENTS : FinanceLine.INTEREST, payment.interest());
            ledger.add(year, time, debt.leased() ? FinanceLine.LEASE_PAYMENTS : FinanceLine.PRINCIPAL, payment.principal());
            ledger.add(year, time, FinanceLine.SINKING_FUND, payment.deposit());
        }
        int last = study.years() - 1;
        ledger.add(last, study.years(), FinanceLine.DEBT_LEFT, debt.owedAtEndOf(last));
    }
}
