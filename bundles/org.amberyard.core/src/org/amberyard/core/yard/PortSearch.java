package org.amberyard.core.yard;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.charging.PortMix;
import org.amberyard.core.charging.PortMixes;

/**
 * Looks for the cheapest ports of a number under each policy. Mixes of types are judged in the order of their port cost, until
 * that could not be made up for even by the bill at least cost with ports for all; so more ports, or stronger ones, need not
 * serve better. The search is exact where that bill is a bound: under prices without falling blocks, and where charging all that
 * fits between runs is not cheaper. In a large yard it ends earlier, when some mixes in a row cost more than the best.
 * Safe for use from several threads.
 */
final class PortSearch {
    private final YardInput billed;
    private final PortOffer offer;
    private final double leastBill;
    private final int patience;
    private final Map<ChargePolicy, PortTrial> trials;
    private final NeedsMemory needs = new NeedsMemory();

    /**
     * @param years the yard in each year, the last of which is billed
     * @param leastBill bill below which no ports and no policy come, money per year
     * @param patience mixes of a number in a row that may cost more than the best before the rest is passed over
     */
    PortSearch(List<YardInput> years, PortOffer offer, double leastBill, int patience) {
        this.billed = years.get(years.size() - 1);
        this.offer = offer;
        this.leastBill = leastBill;
        this.patience = patience;
        this.trials = billed.rule().planned().stream()
                .collect(Collectors.toMap(Function.identity(), p -> new PortTrial(years, billed.rule().with(p), needs)));
    }

    /** The cheapest ports of a number that serve, by policy; now and then it runs a check that may stop it. */
    Map<ChargePolicy, PortChoice> cheapest(int number, Runnable check) {
        Map<ChargePolicy, Best> best = new EnumMap<>(ChargePolicy.class);
        billed.rule().planned().forEach(p -> best.put(p, new Best()));
        for (PortMix mix : PortMixes.of(offer.options(), number)) {
            check.run();
            List<ChargePolicy> open = billed.rule().planned().stream().filter(p -> best.get(p).mayBeBeatenBy(mix)).toList();
            if (open.isEmpty()) {
                break;
            }
            PortYear year = year(mix);
            open.forEach(policy -> best.get(policy).look(policy, year, mix));
        }
        return best.entrySet().stream().filter(e -> e.getValue().choice != null)
                .collect(Collectors.toMap(Map.Entry::getKey, e -> e.getValue().choice));
    }

    /** The best ports of a number so far. */
    private final class Best {
        private PortChoice choice;
        private int dearer;

        boolean mayBeBeatenBy(PortMix mix) {
            return choice == null || dearer < patience && mix.portCost() + leastBill < choice.cost();
        }

        /** Whether ports serve in every year takes longest to tell, so those that would be too dear are not asked. */
        void look(ChargePolicy policy, PortYear year, PortMix mix) {
            if (choice == null && !serves(policy, mix)) {
                return;
            }
            PortChoice next = year.under(policy);
            if (next.served() && (choice == null || next.cost() < choice.cost() && serves(policy, mix))) {
                choice = next;
                dearer = 0;
            } else {
                dearer++;
            }
        }
    }

    private boolean serves(ChargePolicy policy, PortMix mix) {
        return trials.get(policy).serves(mix.units(offer.options()));
    }

    /** Some ports by policy, whether they serve or not. */
    Map<ChargePolicy, PortChoice> judged(PortMix mix) {
        Map<ChargePolicy, PortChoice> judged = new EnumMap<>(ChargePolicy.class);
        PortYear year = year(mix);
        for (ChargePolicy policy : billed.rule().planned()) {
            PortChoice choice = year.under(policy);
            judged.put(policy, choice.served() && !serves(policy, mix) ? choice.notServed() : choice);
        }
        return judged;
    }

    private PortYear year(PortMix mix) {
        return new PortYear(billed, offer, mix, needs);
    }
}
