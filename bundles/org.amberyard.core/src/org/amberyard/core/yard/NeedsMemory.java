package org.amberyard.core.yard;

import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.charging.ChargeRule;
import org.amberyard.core.charging.PortUnit;
import org.amberyard.core.depot.Port;

/**
 * Needs of the buses of a plan, which come again from year to year, under policies that ask alike and with ports of the same power
 * to count on. Safe for use from several threads.
 */
final class NeedsMemory {
    /** Buses under a rule that are kept at least. */
    private static final long MOST_BUSES = 4_096;

    private final RecentAnswers<Key, YardNeeds.OfBus> known = new RecentAnswers<>(MOST_BUSES, needs -> 1);

    /** All that the needs of a bus follow from. */
    private record Key(YardBus bus, double batteryKw, ChargeRule rule, boolean midday, double reserveShare,
            double serviceDays,
            double tripsKwh, boolean ownPlugs) {
        static Key of(YardBus bus, YardInput yard) {
            double batteryKw = Port.countedKw(yard.ports().stream().map(PortUnit::port).toList(), bus.acKw(), bus.dcKw());
            return new Key(bus, batteryKw, alike(yard.rule()), yard.midday(), yard.reserveShare(), yard.calendar()
                    .serviceDays(),
                    bus.tripsKwh(yard.calendar()), yard.ownPlugs());
        }

        /** One of the rules under which a bus has the same needs. */
        private static ChargeRule alike(ChargeRule rule) {
            if (rule.policy() == ChargePolicy.SET_TIME) {
                return rule;
            }
            return ChargeRule.of(rule.managed() ? ChargePolicy.SPREAD : ChargePolicy.AT_ONCE);
        }
    }

    YardNeeds.OfBus of(YardBus bus, YardInput yard) {
        return known.to(Key.of(bus, yard), () -> new YardNeeds.OfBus(bus, yard));
    }
}
