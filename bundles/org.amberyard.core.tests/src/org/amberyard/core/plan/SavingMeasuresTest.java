package org.amberyard.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.amberyard.core.money.InternalRate;
import org.amberyard.core.money.LifeCycleSaving;
import org.amberyard.core.money.MoneyBasis;
import org.amberyard.core.why.Derivation;
import org.junit.jupiter.api.Test;

/** Measures of the electric plan against the diesel plan. */
class SavingMeasuresTest {
    private static final double NEAR = 1e-9;
    private static final SavingMeasures CONSTANT = of(MoneyBasis.CONSTANT, false);
    private static final SavingMeasures NOMINAL = of(MoneyBasis.NOMINAL, false);

    private static SavingMeasures of(MoneyBasis basis, boolean midYear) {
        List<PlanResult> plans = new TinyFinance(basis, midYear).result().plans();
        return new SavingMeasures(plans.get(1), plans.get(0));
    }

    private static SavingMeasures turned(SavingMeasures measures) {
        return new SavingMeasures(measures.baseline(), measures.plan());
    }

    @Test
    void netSavingIsTheDifferenceOfThePresentCosts() {
        LifeCycleSaving saving = CONSTANT.lifeCycle();
        double difference = CONSTANT.baseline().measures().presentCost() - CONSTANT.plan().measures().presentCost();
        assertEquals(difference, saving.netSaving(), NEAR * Math.abs(saving.addedInvestment()));
        assertEquals(CONSTANT.baseline().measures().annualEquivalent() - CONSTANT.plan().measures().annualEquivalent(),
                saving.annualSaving(), 1e-6);
        assertEquals(difference, CONSTANT.savingAfterFinancing(), 1e-6);
    }

    @Test
    void presentValueOfTheSavingIsTheNetSaving() {
        for (boolean midYear : new boolean[] {false, true}) {
            SavingMeasures measures = of(MoneyBasis.CONSTANT, midYear);
            assertEquals(measures.lifeCycle().netSaving(), measures.saving().presentValue(0.02), 1e-6);
        }
    }

    /** The diesel plan saves the investment of the electric one, so it is the one with a rate of return here. */
    @Test
    void ratesIncludeInflationInNominalMoney() {
        InternalRate real = turned(CONSTANT).internalRate();
        InternalRate nominal = turned(NOMINAL).internalRate();
        assertEquals(real.kind(), nominal.kind());
        for (int i = 0; i < real.rates().size(); i++) {
            assertEquals((1 + real.rates().get(i)) * 1.025 - 1, nominal.rates().get(i), NEAR);
        }
        assertEquals(CONSTANT.lifeCycle().netSaving(), NOMINAL.lifeCycle().netSaving(), 1e-6);
        assertEquals(CONSTANT.lifeCycle().savingsToInvestment().orElseThrow(),
                NOMINAL.lifeCycle().savingsToInvestment().orElseThrow(), NEAR);
        assertEquals((1 + CONSTANT.modifiedRate().orElseThrow()) * 1.025 - 1, NOMINAL.modifiedRate().orElseThrow(), NEAR);
    }

    @Test
    void adjustedRateIncludesInflationInNominalMoney() {
        double real = CONSTANT.adjustedRate().orElseThrow();
        assertEquals((1 + real) * 1.025 - 1, NOMINAL.adjustedRate().orElseThrow(), NEAR);
        assertEquals(real, why(CONSTANT).adjustedRate().value(), 0);
        assertEquals(NOMINAL.adjustedRate().orElseThrow(), why(NOMINAL).adjustedRate().value(), 0);
    }

    private static SavingWhy why(SavingMeasures measures) {
        return measures.why((plan, category) -> Derivation.of(category.label(), plan.ledger().presentValue(category),
                Derivation.MONEY, "present value"));
    }

    @Test
    void derivationsGoDownToTheCategories() {
        Derivation net = why(CONSTANT).netSaving();
        double ofParts = net.parts().get(0).value() - net.parts().get(1).value();
        assertEquals(CONSTANT.lifeCycle().netSaving(), ofParts, 1e-6);
        Derivation investment = net.parts().get(1);
        assertEquals(investment.value(), investment.parts().stream().mapToDouble(Derivation::value).sum(), 1e-6);
        assertEquals(CONSTANT.lifeCycle().annualSaving(), why(CONSTANT).annualSaving().value(), 1e-6);
        assertEquals(CONSTANT.lifeCycle().savingsToInvestment().orElseThrow(), why(CONSTANT).savingsToInvestment().value(), 0);
    }
}
