package org.amberyard.core.yard;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.core.charging.ChargePolicy;

/**
 * One year of a yard under each charging policy, and under each tariff.
 *
 * @param policies the year under each policy, in the order of {@link ChargePolicy}
 * @param tariffs the year under the tariff in use and under the others, each with the policy in use
 */
public record YardComparison(List<YardYear> policies, List<YardYear> tariffs) {

    public YardComparison {
        policies = List.copyOf(policies);
        tariffs = List.copyOf(tariffs);
    }

    /**
     * Compares.
     *
     * @param yard the yard as planned; its rule also tells when charging at a set time would start
     * @param others the same yard under other tariffs
     * @param memory years that are known
     */
    public static YardComparison of(YardInput yard, List<YardInput> others, YardMemory memory) {
        List<YardYear> policies = new ArrayList<>();
        for (ChargePolicy policy : ChargePolicy.values()) {
            policies.add(memory.year(yard.with(yard.rule().with(policy))));
        }
        List<YardYear> tariffs = new ArrayList<>(List.of(memory.year(yard)));
        others.forEach(other -> tariffs.add(memory.year(other)));
        return new YardComparison(policies, tariffs);
    }

    /** The year under a policy. */
    public YardYear under(ChargePolicy policy) {
        return policies.get(policy.ordinal());
    }
}
