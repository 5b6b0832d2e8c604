package org.amberyard.core.yard;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.amberyard.core.charging.ChargePolicy;

/**
 * The cheapest ports that have every bus of a plan ready on every day of every year under a policy, for each number of ports.
 * Costs are per year, base-date money: ports by capital recovery and fees, plug swaps, and the bill of the last year.
 *
 * @param policy the policy
 * @param offer port types on offer
 * @param byNumber the cheapest of each number that serves, fewest ports first
 * @param bought the ports that the plan has in its last year, whether they serve or not; empty when it buys none
 */
public record PortCurve(ChargePolicy policy, PortOffer offer, List<PortChoice> byNumber, Optional<PortChoice> bought) {

    public PortCurve {
        byNumber = List.copyOf(byNumber);
    }

    /** The cheapest of all that serve; of equals the one with the fewest ports. */
    public Optional<PortChoice> cheapest() {
        return cheapest(byNumber);
    }

    static Optional<PortChoice> cheapest(List<PortChoice> choices) {
        return choices.stream().min(Comparator.comparingDouble(PortChoice::cost).thenComparingInt(c -> c.mix().ports()));
    }

    /** The fewest that serve. */
    public Optional<PortChoice> fewest() {
        return fewest(byNumber);
    }

    static Optional<PortChoice> fewest(List<PortChoice> choices) {
        return choices.stream().min(Comparator.comparingInt(c -> c.mix().ports()));
    }

    /** True for the ports that the plan buys, all of them in use. */
    public boolean buys(PortChoice choice) {
        return choice.unused() == 0 && bought.filter(b -> b.mix().counts().equals(choice.mix().counts())).isPresent();
    }
}
