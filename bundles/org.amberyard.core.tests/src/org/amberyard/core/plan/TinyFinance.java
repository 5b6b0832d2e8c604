package org.amberyard.core.plan;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.finance.Borrowing;
import org.amberyard.core.finance.TaxRules;
import org.amberyard.core.money.MoneyBasis;
import org.amberyard.core.money.MoneyRates;
import org.amberyard.core.money.MoneyRules;

/** The electric plan of the {@link TinyDistrict}, evaluated once in each kind of money and paid for in many ways. */
final class TinyFinance {
    static final MoneyRates RATES = new MoneyRates(0.02, 0.025);
    private static final DutyTable DUTY = DutyTable.of(TinyDistrict.duty());

    private final StudyInput study;
    private final StudyResult result;

    TinyFinance(MoneyBasis basis, boolean midYear) {
        study = TinyDistrict.study(new MoneyRules(RATES, basis, midYear));
        result = StudyEvaluation.of(study, DUTY);
    }

    StudyResult result() {
        return result;
    }

    PlanResult electric() {
        return result.plans().get(1);
    }

    PlanFinance paid(PaymentPlan payment) {
        return paid(payment, TaxRules.NONE);
    }

    PlanFinance paid(PaymentPlan payment, TaxRules taxes) {
        FleetRules old = study.rules();
        StudyInput taxed = TinyDistrict.withRules(study, new FleetRules(old.spareCoverShare(), old.insuranceShare(),
                old.reserveShare(), old.upkeep(), taxes));
        return PlanFinance.of(taxed, electric().plan().paid(payment), electric().fleet(), electric().costs());
    }

    static PaymentPlan borrowing(Financing.Covers covers, double share, Borrowing terms) {
        return new PaymentPlan(List.of(new Financing("Loan", covers, share, 0, TinyDistrict.YEARS - 1, terms)),
                OptionalDouble.empty());
    }

    /** Sum over the years of the study. */
    static double sum(IntToDoubleFunction ofYear) {
        return IntStream.range(0, TinyDistrict.YEARS).mapToDouble(ofYear).sum();
    }
}
