package org.amberyard.core.yard;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.charging.PlugIn;
import org.amberyard.core.charging.PlugWay;
import org.amberyard.core.charging.StepGrid;
import org.amberyard.core.charging.YardCharging;
import org.amberyard.core.charging.YardStretch;

/**
 * Puts the buses of a yard to its ports on a stretch of days. Where a managed policy leaves a bus short, because it
 * charges no more between runs than it must and splits the time at shared plugs, the buses come to the plugs as under a
 * policy that has them ready; see {@link PlugWay}.
 */
final class StretchPlanner {
    private final YardInput yard;
    private final YardNeeds own;
    private final Map<ChargePolicy, YardNeeds> needs = new EnumMap<>(ChargePolicy.class);

    StretchPlanner(YardInput yard, YardNeeds own) {
        this.yard = yard;
        this.own = own;
    }

    /** Charging with what the buses asked for. */
    private record Charged(YardCharging charging, List<StretchNeed> asked) {
        boolean betterThan(Charged other) {
            return charging.schedule().shortKwh() < other.charging.schedule().shortKwh();
        }
    }

    /** Load of a stretch, charged by the yard's policy; where prices decide at full power, to be scheduled. */
    StretchLoad of(ServiceMonth service, StretchKind kind) {
        StepGrid grid = grid(kind);
        Charged charged = charged(service, kind);
        List<MeterHeat> heat = new ArrayList<>();
        double[] efficiencies = StretchLoad.efficiencies(charged.charging, charged.asked.size());
        for (int bus = 0; bus < efficiencies.length; bus++) {
            heat.add(charged.asked.get(bus).heat(grid, efficiencies[bus]));
        }
        return new StretchLoad(service, kind, charged.charging, charged.charging.schedule(),
                new BaseLoad(heat, yard.standbyKw(), yard.building().through(service.month(), kind)));
    }

    private Charged charged(ServiceMonth service, StretchKind kind) {
        Charged best = charged(service, kind, yard.rule().policy());
        for (ChargePolicy policy : yard.rule().policy().otherWays()) {
            if (best.charging.served()) {
                break;
            }
            Charged other = charged(service, kind, policy);
            best = other.betterThan(best) ? other : best;
        }
        return best;
    }

    private Charged charged(ServiceMonth service, StretchKind kind, ChargePolicy way) {
        List<StretchNeed> asked = asked(service, kind, way);
        return new Charged(way(service, kind, way, asked).charging(yard.ports(), yard.rule()), asked);
    }

    /** All stretches of the year with the buses that are to be charged, in the policy's own way and then in others. */
    Stream<List<PlugWay>> all() {
        List<ChargePolicy> ways = new ArrayList<>(List.of(yard.rule().policy()));
        ways.addAll(yard.rule().policy().otherWays());
        return yard.calendar().months().stream().flatMap(service -> service.times().keySet().stream().sorted()
                .map(kind -> ways.stream().map(policy -> way(service, kind, policy, asked(service, kind, policy))).toList()));
    }

    private PlugWay way(ServiceMonth service, StretchKind kind, ChargePolicy policy, List<StretchNeed> asked) {
        return new PlugWay(yard.rule().with(policy), stretch(service, kind, asked));
    }

    private List<StretchNeed> asked(ServiceMonth service, StretchKind kind, ChargePolicy policy) {
        return needs.computeIfAbsent(policy, p -> p == yard.rule().policy() ? own : own.under(yard.rule().with(p)))
                .on(service, kind);
    }

    private YardStretch stretch(ServiceMonth service, StretchKind kind, List<StretchNeed> asked) {
        StepGrid grid = grid(kind);
        List<PlugIn> plugIns = new ArrayList<>();
        for (int bus = 0; bus < asked.size(); bus++) {
            asked.get(bus).addTo(plugIns, bus, grid.lengthMin());
        }
        return new YardStretch(service.times().get(kind), grid, plugIns, yard.swaps().of(kind.days().size()));
    }

    private StepGrid grid(StretchKind kind) {
        return StepGrid.ofDays(kind.days().size(), yard.stepMin());
    }
}
