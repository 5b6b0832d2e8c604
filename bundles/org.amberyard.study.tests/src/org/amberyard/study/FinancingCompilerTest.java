package org.amberyard.study;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalDouble;
import org.amberyard.core.finance.Amortisation;
import org.amberyard.core.finance.Bond;
import org.amberyard.core.finance.Convention;
import org.amberyard.core.finance.Depreciation;
import org.amberyard.core.finance.Lease;
import org.amberyard.core.finance.Macrs;
import org.amberyard.core.finance.PropertyClass;
import org.amberyard.core.finance.StraightLineMethod;
import org.amberyard.core.finance.TaxRules;
import org.amberyard.core.plan.PaymentPlan;
import org.amberyard.model.plans.FinancedPurchases;
import org.amberyard.model.plans.Financing;
import org.amberyard.model.plans.FinancingKind;
import org.amberyard.model.plans.PaymentInterval;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.plans.PlansFactory;
import org.amberyard.model.plans.Repayment;
import org.amberyard.model.study.DepreciationClass;
import org.amberyard.model.study.DepreciationConvention;
import org.amberyard.model.study.Settings;
import org.amberyard.model.study.StudyFactory;
import org.junit.jupiter.api.Test;

class FinancingCompilerTest {
    private final Settings settings = StudyFactory.eINSTANCE.createSettings();
    private final Plan plan = PlansFactory.eINSTANCE.createPlan();

    private Financing add(FinancingKind kind) {
        Financing financing = PlansFactory.eINSTANCE.createFinancing();
        financing.setName("F");
        financing.setKind(kind);
        plan.getFinancing().add(financing);
        return financing;
    }

    private org.amberyard.core.plan.Financing compiled() {
        return new FinancingCompiler(settings).payment(plan).financing().get(0);
    }

    @Test
    void defaultsAreCashWithoutTax() {
        add(FinancingKind.CASH);
        assertEquals(PaymentPlan.CASH, new FinancingCompiler(settings).payment(plan));
        assertEquals(TaxRules.NONE, new TaxCompiler(settings).taxes());
    }

    @Test
    void loan() {
        Financing loan = add(FinancingKind.LOAN);
        loan.setCovers(FinancedPurchases.BUSES);
        loan.setShare(0.8);
        loan.setFirstYear(2028);
        loan.setRatePerYear(0.05);
        loan.setYears(7);
        loan.setInterval(PaymentInterval.QUARTERLY);
        loan.setInAdvance(true);
        loan.setRepayment(Repayment.EQUAL_PRINCIPAL);
        loan.setInterestOnlyPayments(4);
        loan.setFeeShare(0.01);
        assertEquals(new org.amberyard.core.plan.Financing("F", org.amberyard.core.plan.Financing.Covers.BUSES, 0.8, 2, 14,
                new Amortisation(org.amberyard.core.finance.Repayment.EQUAL_PRINCIPAL, 0.05, 7, 4, true, 4, 0.01)), compiled());
    }

    @Test
    void leaseAndBond() {
        Financing lease = add(FinancingKind.LEASE);
        lease.setInterval(PaymentInterval.MONTHLY);
        lease.setBuyOutShare(0.25);
        assertEquals(new Lease(0.04, 10, 12, false, 0.25, 0), compiled().terms());
        plan.getFinancing().clear();
        Financing bond = add(FinancingKind.BOND);
        bond.setRepayment(Repayment.AT_END);
        bond.setFeeShare(0.015);
        assertEquals(new Bond(org.amberyard.core.finance.Repayment.AT_END, 0.04, 10, 0.015, OptionalDouble.empty()),
                compiled().terms());
        bond.setSinkingFund(true);
        bond.setLastYear(2030);
        assertEquals(new Bond(org.amberyard.core.finance.Repayment.AT_END, 0.04, 10, 0.015, OptionalDouble.of(0.02)),
                compiled().terms());
        assertEquals(List.of(0, 4), List.of(compiled().firstYear(), compiled().lastYear()));
    }

    @Test
    void capOfTheBudget() {
        plan.setYearlyCap(500_000);
        assertEquals(OptionalDouble.of(500_000), new FinancingCompiler(settings).payment(plan).yearlyCap());
    }

    @Test
    void taxedOperator() {
        settings.setIncomeTaxRate(0.26);
        settings.setBusDepreciation(DepreciationClass.STRAIGHT_LINE);
        settings.setStraightLineYears(9);
        settings.setSiteDepreciation(DepreciationClass.YEARS_7);
        settings.setDepreciationConvention(DepreciationConvention.FOURTH_QUARTER);
        settings.setBonusDepreciation(0.4);
        assertEquals(new TaxRules(0.26, new Depreciation(new StraightLineMethod(9, Convention.FOURTH_QUARTER), 0.4),
                new Depreciation(new Macrs(PropertyClass.YEARS_7, Convention.FOURTH_QUARTER), 0.4)),
                new TaxCompiler(settings).taxes());
    }
}
