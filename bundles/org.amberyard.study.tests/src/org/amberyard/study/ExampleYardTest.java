package org.amberyard.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.yard.YardComparison;
import org.amberyard.core.yard.YardMemory;
import org.amberyard.core.yard.YardYear;
import org.junit.jupiter.api.Test;

/** The yard of the example, {@code examples/ostrick-vale}, under other policies than its own. */
class ExampleYardTest {

    /** In 2030 a bus that charges at once between runs is full again exactly, which rounding must not turn into more than full. */
    @Test
    void everyPolicyHasTheBusesOf2030Ready() throws Exception {
        StudyResult result = ExampleStudy.result();
        YardComparison policies = YardComparison.of(result.plans().get(1).yards().get(4).input(), List.of(), new YardMemory());
        YardYear least = policies.under(ChargePolicy.LEAST_COST);
        for (YardYear year : policies.policies()) {
            assertEquals(0, year.missingKwh().stream().mapToDouble(Double::doubleValue).sum(), 1e-6);
            assertTrue(least.parts().total() <= year.parts().total());
        }
    }
}
