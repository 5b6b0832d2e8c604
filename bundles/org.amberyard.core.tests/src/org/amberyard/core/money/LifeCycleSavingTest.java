package org.amberyard.core.money;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.amberyard.core.why.Derivation;
import org.junit.jupiter.api.Test;

class LifeCycleSavingTest {

    @Test
    void noRatioWithoutAnAddedInvestment() {
        LifeCycleSaving cheaper = new LifeCycleSaving(100, -50, 0.03, 10);
        assertEquals(OptionalDouble.empty(), cheaper.savingsToInvestment());
        assertEquals(OptionalDouble.empty(), cheaper.adjustedRate());
        assertEquals(150, cheaper.netSaving(), 0);
    }

    @Test
    void aLossHasARatioButNoRate() {
        LifeCycleSaving loss = new LifeCycleSaving(-100, 50, 0.03, 10);
        assertEquals(-2, loss.savingsToInvestment().orElseThrow(), 0);
        assertEquals(OptionalDouble.empty(), loss.adjustedRate());
    }

    /** The three measures agree on whether an investment pays. */
    @Property
    void measuresAgree(@ForAll @DoubleRange(min = 1, max = 1e6) double saving,
            @ForAll @DoubleRange(min = 1, max = 1e6) double investment, @ForAll @DoubleRange(min = 0, max = 0.2) double rate,
            @ForAll @IntRange(min = 1, max = 40) int years) {
        LifeCycleSaving measures = new LifeCycleSaving(saving, investment, rate, years);
        boolean pays = measures.netSaving() > 1e-6;
        boolean loses = measures.netSaving() < -1e-6;
        assertTrue(!pays || measures.savingsToInvestment().orElseThrow() > 1 && measures.adjustedRate().orElseThrow() > rate);
        assertTrue(!loses || measures.savingsToInvestment().orElseThrow() < 1 && measures.adjustedRate().orElseThrow() < rate);
        assertEquals(measures.netSaving(), measures.annualSaving() * DiscountFactor.uniform(rate, years), 1e-6);
    }

    /** The investment grows at the adjusted rate to what the savings come to at the discount rate. */
    @Property
    void adjustedRateIsThatOfReinvestedSavings(@ForAll @DoubleRange(min = 1, max = 1e6) double saving,
            @ForAll @DoubleRange(min = 0, max = 0.2) double rate, @ForAll @IntRange(min = 1, max = 40) int years) {
        double adjusted = new LifeCycleSaving(saving, 1000, rate, years).adjustedRate().orElseThrow();
        double end = saving * Math.pow(1 + rate, years);
        assertEquals(end, 1000 * Math.pow(1 + adjusted, years), 1e-9 * end);
    }

    @Test
    void derivationsCarryTheFigures() {
        LifeCycleSaving measures = new LifeCycleSaving(15_519.32, 11_505.69, 0.03, 15);
        Derivation operating = Derivation.of("Operating saving", 15_519.32, Derivation.MONEY, "given");
        Derivation investment = Derivation.of("Added investment", 11_505.69, Derivation.MONEY, "given");
        Derivation net = measures.whyNetSaving(operating, investment);
        Derivation ratio = measures.whySavingsToInvestment(operating, investment);
        assertEquals(net.parts().get(0).value() - net.parts().get(1).value(), net.value(), 1e-9);
        assertEquals(ratio.parts().get(0).value() / ratio.parts().get(1).value(), ratio.value(), 1e-12);
        assertEquals(measures.annualSaving(), measures.whyAnnualSaving(net).value(), 1e-9);
        assertEquals(measures.adjustedRate().orElseThrow(), measures.whyAdjustedRate(ratio).value(), 0);
    }

    @Test
    void costEffectivenessByCapitalRecovery() {
        CostEffectiveness grant = new CostEffectiveness(1000, 0, 10, 4);
        assertEquals(25, grant.costPerUnit(), 1e-12);
        assertEquals(1000, grant.largestCost(25), 1e-12);
        Derivation cost = Derivation.of("Grant", 1000, Derivation.MONEY, "asked");
        Derivation why = grant.why("NOx", "short ton", cost, Derivation.of("Reduction", 4, "short ton/a", "before less after"));
        assertEquals("Cost per short ton of NOx", why.name());
        assertEquals(why.value(), why.parts().get(0).value() * why.parts().get(1).value() / why.parts().get(2).value(), 1e-12);
    }
}
