package org.amberyard.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.amberyard.core.plan.BudgetYear;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.plans.Financing;
import org.amberyard.model.plans.FinancingKind;
import org.amberyard.model.plans.PlansFactory;
import org.amberyard.model.plans.Repayment;
import org.amberyard.model.study.MoneyBasis;
import org.amberyard.model.study.Study;
import org.amberyard.model.validation.Finding;
import org.amberyard.model.validation.Severity;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The invented district's electric plan, paid for by serial bonds under a cap, by an operator that is taxed. */
class ExampleFinanceTest {
    private static final double CAP = 700_000;
    private static final StudyEvaluator EVALUATOR = new StudyEvaluator();
    private static Study study;
    private static StudyResult cash;
    private static StudyResult financed;

    @BeforeAll
    static void evaluate() throws Exception {
        study = ExampleStudy.load();
        cash = EVALUATOR.evaluate(StudyCompiler.compile(study));
        Financing bonds = PlansFactory.eINSTANCE.createFinancing();
        bonds.setName("Serial bonds");
        bonds.setKind(FinancingKind.BOND);
        bonds.setRepayment(Repayment.EQUAL_PRINCIPAL);
        bonds.setYears(12);
        bonds.setFeeShare(0.015);
        study.getPlans().get(1).getFinancing().add(bonds);
        study.getPlans().get(1).setYearlyCap(CAP);
        study.getSettings().setIncomeTaxRate(0.25);
        financed = EVALUATOR.evaluate(StudyCompiler.compile(study));
    }

    @Test
    void theCostsOfCashPurchasesStay() {
        for (int plan = 0; plan < cash.plans().size(); plan++) {
            assertEquals(cash.plans().get(plan).measures(), financed.plans().get(plan).measures());
            assertEquals(cash.plans().get(plan).measures().presentCost(), cash.plans().get(plan).presentCostAfterFinancing(), 0);
        }
        assertTrue(financed.plans().get(0).finance().debts().isEmpty());
        assertFalse(financed.plans().get(1).finance().debts().isEmpty());
    }

    @Test
    void bothKindsOfMoneyGiveTheSamePresentCostAfterFinancing() {
        study.getSettings().setMoneyBasis(study.getSettings().getMoneyBasis() == MoneyBasis.NOMINAL ? MoneyBasis.CONSTANT
                : MoneyBasis.NOMINAL);
        StudyResult other = EVALUATOR.evaluate(StudyCompiler.compile(study));
        for (int plan = 0; plan < cash.plans().size(); plan++) {
            double expected = financed.plans().get(plan).presentCostAfterFinancing();
            assertEquals(expected, other.plans().get(plan).presentCostAfterFinancing(), 1e-9 * Math.abs(expected));
        }
    }

    @Test
    void yearsAboveTheCapAreNamed() {
        PlanResult plan = financed.plans().get(1);
        List<BudgetYear> above = plan.finance().budget().stream().filter(y -> y.aboveCap().orElse(0) > 0).toList();
        assertFalse(above.isEmpty());
        List<Finding> found = ResultFindings.of(study, financed).stream().filter(f -> f.message().contains("cap of")).toList();
        assertEquals(above.size(), found.size());
        assertEquals(Severity.WARNING, found.get(0).severity());
        assertEquals(study.getPlans().get(1), found.get(0).element());
        assertTrue(found.get(0).message().startsWith("Plan “Electric in stages”: " + (financed.input().baseYear()
                + above.get(0).year()) + " asks for "), found.get(0).message());
        assertTrue(ResultFindings.of(study, cash).stream().noneMatch(f -> f.message().contains("cap of")));
    }
}
