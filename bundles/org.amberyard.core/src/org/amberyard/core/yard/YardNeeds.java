package org.amberyard.core.yard;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.amberyard.core.charging.ChargeRule;

/** What the buses of a yard need from its ports on each stretch of days; worked out once. Safe for use from several threads. */
final class YardNeeds {
    private final YardInput yard;
    private final NeedsMemory memory;
    private final List<OfBus> buses;

    /** Needs of a bus. */
    static final class OfBus {
        /** Room for all stretches of a year without making more. */
        private static final int STRETCHES = 128;

        private final YardBus bus;
        private final BusNeeds needs;
        private final Map<When, StretchNeed> known = new ConcurrentHashMap<>(STRETCHES);

        OfBus(YardBus bus, YardInput yard) {
            this.bus = bus;
            this.needs = new BusNeeds(bus, yard);
        }

        private StretchNeed on(When when) {
            return known.computeIfAbsent(when, w -> new StretchNeed(bus, needs.on(w.service, w.kind)));
        }
    }

    private record When(ServiceMonth service, StretchKind kind) {
        /** Of what is quick to look at; there are fewer than sixteen kinds. */
        @Override
        public int hashCode() {
            return 32 * service.month() + (service.extendedYear() ? 16 : 0) + kind.ordinal();
        }
    }

    /** Needs of a yard, as far as they are known from another yard. */
    YardNeeds(YardInput yard, NeedsMemory memory) {
        this.yard = yard;
        this.memory = memory;
        this.buses = yard.buses().stream().map(bus -> memory.of(bus, yard)).toList();
    }

    /** Needs of the same buses under another rule. */
    YardNeeds under(ChargeRule rule) {
        return new YardNeeds(yard.with(rule), memory);
    }

    /** Needs in the order of the buses. */
    List<StretchNeed> on(ServiceMonth service, StretchKind kind) {
        When when = new When(service, kind);
        List<StretchNeed> all = new ArrayList<>(buses.size());
        for (OfBus bus : buses) {
            all.add(bus.on(when));
        }
        return all;
    }
}
