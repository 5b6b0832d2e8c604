package org.amberyard.study;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.amberyard.core.finance.Amortisation;
import org.amberyard.core.finance.Bond;
import org.amberyard.core.finance.Borrowing;
import org.amberyard.core.finance.Lease;
import org.amberyard.core.finance.Repayment;
import org.amberyard.core.plan.PaymentPlan;
import org.amberyard.model.plans.Financing;
import org.amberyard.model.plans.FinancingKind;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.study.Settings;

/** Compiles how a plan is paid for. */
final class FinancingCompiler {
    private final Settings settings;

    FinancingCompiler(Settings settings) {
        this.settings = settings;
    }

    PaymentPlan payment(Plan plan) {
        List<org.amberyard.core.plan.Financing> financing = plan.getFinancing().stream()
                .filter(f -> f.getKind() != FinancingKind.CASH && (f.getShare() > 0 || f.getDrawnSum() > 0)).map(this::financing).toList();
        return new PaymentPlan(financing,
                plan.getYearlyCap() > 0 ? OptionalDouble.of(plan.getYearlyCap()) : OptionalDouble.empty());
    }

    private org.amberyard.core.plan.Financing financing(Financing financing) {
        int first = financing.getFirstYear() == 0 ? 0 : financing.getFirstYear() - settings.getBaseYear();
        int last = financing.getLastYear() == 0 ? settings.getHorizonYears() - 1
                : financing.getLastYear() - settings.getBaseYear();
        return new org.amberyard.core.plan.Financing(financing.getName(), covers(financing),
                financing.getDrawnSum() > 0 ? 1 : financing.getShare(), first, last, terms(financing), drawn(financing));
    }

    private Optional<org.amberyard.core.plan.Financing.Drawn> drawn(Financing financing) {
        int year = financing.getDrawnYear() - settings.getBaseYear();
        return financing.getDrawnSum() > 0 && financing.getDrawnYear() > 0 && year < 0
                ? Optional.of(new org.amberyard.core.plan.Financing.Drawn(year, financing.getDrawnSum())) : Optional.empty();
    }

    private static org.amberyard.core.plan.Financing.Covers covers(Financing financing) {
        return switch (financing.getCovers()) {
            case ALL -> org.amberyard.core.plan.Financing.Covers.ALL;
            case BUSES -> org.amberyard.core.plan.Financing.Covers.BUSES;
            case PORTS_AND_WORKS -> org.amberyard.core.plan.Financing.Covers.PORTS_AND_WORKS;
        };
    }

    private static Borrowing terms(Financing financing) {
        return switch (financing.getKind()) {
            case LEASE -> new Lease(financing.getRatePerYear(), financing.getYears(), financing.getInterval().getValue(),
                    financing.isInAdvance(), financing.getBuyOutShare(), financing.getFeeShare());
            case BOND -> new Bond(repayment(financing), financing.getRatePerYear(), financing.getYears(), financing.getFeeShare(),
                    financing.isSinkingFund() ? OptionalDouble.of(financing.getSinkingFundRate()) : OptionalDouble.empty());
            case LOAN, CASH -> new Amortisation(repayment(financing), financing.getRatePerYear(), financing.getYears(),
                    financing.getInterval().getValue(), financing.isInAdvance(), financing.getInterestOnlyPayments(),
                    financing.getFeeShare());
        };
    }

    private static Repayment repayment(Financing financing) {
        return switch (financing.getRepayment()) {
            case LEVEL -> Repayment.LEVEL;
            case EQUAL_PRINCIPAL -> Repayment.EQUAL_PRINCIPAL;
            case AT_END -> Repayment.AT_END;
        };
    }
}
