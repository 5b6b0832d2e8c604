package org.amberyard.core.yard;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.charging.PortUnit;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.progress.Steps;

/**
 * A plan's yard beside what it might be: under other charging policies, on other tariffs, with other ports. What is asked for is
 * worked out then, not before, and kept in the memory.
 *
 * @param years the yard in each year, as planned; its rule also tells when charging at a set time would start
 * @param otherTariffs the yard of the last year on other tariffs
 * @param offer ports on offer
 * @param bought ports that the plan has in its last year
 * @param memory years that are known
 */
public record YardComparison(List<YardInput> years, List<YardInput> otherTariffs, PortOffer offer, List<PortUnit> bought,
        YardMemory memory) {

    public YardComparison {
        years = List.copyOf(years);
        otherTariffs = List.copyOf(otherTariffs);
        bought = List.copyOf(bought);
    }

    /** The same with other prices of ports. */
    public YardComparison with(PortOffer other) {
        return new YardComparison(years, otherTariffs, other, bought, memory);
    }

    /** A year, counted from the base year, under a policy. */
    public YardYear under(int year, ChargePolicy policy) {
        return memory.year(years.get(year).with(years.get(year).rule().with(policy)));
    }

    /** A year under each policy, in the order of {@link ChargePolicy}; under a cap where one is given. */
    public List<YardYear> policies(int year) {
        return years.get(year).rule().comparable().stream().map(p -> under(year, p)).toList();
    }

    /** Each year under each policy; years that are alike are planned once. */
    public List<List<YardYear>> policiesByYear(Progress progress) {
        return Steps.of(IntStream.range(0, years.size()).boxed().toList(), (year, check) -> {
            List<YardYear> policies = new ArrayList<>();
            for (ChargePolicy policy : years.get(year).rule().comparable()) {
                check.run();
                policies.add(under(year, policy));
            }
            return policies;
        }, progress);
    }

    /**
     * The last year under a policy on a tariff.
     *
     * @param tariff place of the tariff among those compared, 0 for the one in use
     */
    public YardInput last(ChargePolicy policy, int tariff) {
        YardInput input = tariff == 0 ? years.get(years.size() - 1) : otherTariffs.get(tariff - 1);
        return input.with(input.rule().with(policy));
    }

    /** The last year on the tariff in use and on the others, each with the policy in use. */
    public List<YardYear> tariffs() {
        return Stream.concat(Stream.of(years.get(years.size() - 1)), otherTariffs.stream()).map(memory::year).toList();
    }

    /** The cheapest ports by number for each policy that a yard is planned with; none where no bus is ever electric. */
    public List<PortCurve> ports(Progress progress) {
        return memory.ports(new PortQuestion(years, offer, bought), progress);
    }
}
