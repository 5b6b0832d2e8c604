package org.amberyard.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.yard.YardComparison;
import org.amberyard.core.yard.YardYear;
import org.junit.jupiter.api.Test;

/** The yard of the example, {@code examples/ostrick-vale}, under other policies than its own. */
class ExampleYardTest {
    private static final int IN_2030 = 4;

    /** In 2030 a bus that charges at once between runs is full again exactly, which rounding must not turn into more than full. */
    @Test
    void everyPolicyHasTheBusesOf2030Ready() throws Exception {
        StudyResult result = ExampleStudy.result();
        YardComparison policies = result.plans().get(1).yardComparison();
        YardYear least = policies.under(IN_2030, ChargePolicy.LEAST_COST);
        for (YardYear year : policies.policies(IN_2030)) {
            assertEquals(0, year.missingKwh().stream().mapToDouble(Double::doubleValue).sum(), 1e-6);
            assertTrue(least.parts().total() <= year.parts().total());
        }
    }
}
