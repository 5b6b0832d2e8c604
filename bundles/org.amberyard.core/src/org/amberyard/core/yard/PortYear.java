package org.amberyard.core.yard;

import java.util.EnumMap;
import java.util.Map;
import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.charging.PortMix;

/** A year of a yard with a choice of ports under one policy after the other; what one policy needs of another is planned once. */
final class PortYear {
    private final YardInput yard;
    private final PortOffer offer;
    private final PortMix mix;
    private final NeedsMemory needs;
    private final Map<ChargePolicy, YardYear> known = new EnumMap<>(ChargePolicy.class);

    PortYear(YardInput yard, PortOffer offer, PortMix mix, NeedsMemory needs) {
        this.yard = yard.withPorts(mix.units(offer.options()));
        this.offer = offer;
        this.mix = mix;
        this.needs = needs;
    }

    /** The ports with what they cost under a policy; served as far as this year is concerned. */
    PortChoice under(ChargePolicy policy) {
        YardYear year = year(policy);
        boolean served = year.months().stream().allMatch(m -> m.shortfalls().isEmpty());
        return new PortChoice(mix.withSwaps(year.swaps(), offer.payPerSwap()), 0, year.parts(), served);
    }

    private YardYear year(ChargePolicy policy) {
        YardYear year = known.get(policy);
        if (year == null) {
            YardInput ruled = yard.under(policy);
            year = YardYear.of(ruled, new YardPlanner(ruled, new LoadMemory(needs), other -> year(other.rule().policy())).year());
            known.put(policy, year);
        }
        return year;
    }
}
