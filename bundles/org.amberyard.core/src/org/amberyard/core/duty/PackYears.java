package org.amberyard.core.duty;

import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.battery.FadeRate;
import org.amberyard.core.battery.PackStress;

/**
 * What routes do to packs, kept beside the duty: what was asked once is not walked again when a price changes.
 */
public final class PackYears {
    private static final int HALVINGS = 10;

    private final Climate climate;
    private final Map<RouteUse, Map<Asked, PackYear>> years = Collections.synchronizedMap(new IdentityHashMap<>());
    private final Map<RouteUse, Map<Asked, Double>> limits = Collections.synchronizedMap(new IdentityHashMap<>());

    private record Asked(BatterySpec battery, BlockCheck check) {
    }

    /**
     * A year of a pack on a route.
     *
     * @param rate how fast it loses capacity
     * @param fullCycles its full cycles
     */
    public record PackYear(FadeRate rate, double fullCycles) {

        private static PackYear of(PackStress stress, BatterySpec battery) {
            return new PackYear(battery.life().fade().rate(stress), stress.fullCycles());
        }

        /** The same with other full cycles, each swing as deep as before. */
        public PackYear withFullCycles(double others) {
            return fullCycles > 0 ? new PackYear(rate.withCycles(others / fullCycles), others) : this;
        }
    }

    PackYears(Climate climate) {
        this.climate = climate;
    }

    /** A year of a route that is driven every service day. */
    public PackYear of(RouteUse use, BatterySpec battery, BlockCheck check) {
        return years.computeIfAbsent(use, u -> new ConcurrentHashMap<>()).computeIfAbsent(new Asked(battery, check),
                a -> PackYear.of(StressOfRoute.of(use, climate, battery, check), battery));
    }

    /** A year of a bus without a route: it stands charged and is driven now and then. */
    public PackYear parked(BatterySpec battery, double fullCycles) {
        return PackYear.of(StressOfRoute.parked(climate, battery, fullCycles), battery);
    }

    /**
     * Health below which a route fails on its worst day, to a thousandth of the way to the end of life; zero when it holds to
     * the end of life, and also when it fails with a new pack, because another pack would not help.
     */
    public double leastHealth(RouteUse use, BatterySpec battery, BlockCheck check) {
        return limits.computeIfAbsent(use, u -> new ConcurrentHashMap<>()).computeIfAbsent(new Asked(battery, check),
                a -> leastHealthOf(use, a));
    }

    private static double leastHealthOf(RouteUse use, Asked asked) {
        double fails = asked.battery().life().endOfLifeShare();
        double passes = 1;
        if (passes(use, asked, fails) || !passes(use, asked, passes)) {
            return 0;
        }
        for (int halving = 0; halving < HALVINGS; halving++) {
            double middle = (fails + passes) / 2;
            if (passes(use, asked, middle)) {
                passes = middle;
            } else {
                fails = middle;
            }
        }
        return passes;
    }

    private static boolean passes(RouteUse use, Asked asked, double health) {
        BlockCheck check = asked.check();
        return use.designDays().stream().allMatch(d -> check.of(d.block(check.midday()), asked.battery(), health).passes());
    }
}
