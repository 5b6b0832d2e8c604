package org.amberyard.core.yard;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.amberyard.core.charging.BusAcceptance;
import org.amberyard.core.charging.PlugIn;
import org.amberyard.core.charging.StepGrid;
import org.amberyard.core.charging.YardCharging;
import org.amberyard.core.charging.YardStretch;

/** Puts the buses of a yard to its ports on a stretch of days. */
final class StretchPlanner {
    private final YardInput yard;
    private final YardNeeds needs;

    StretchPlanner(YardInput yard) {
        this(yard, new YardNeeds(yard));
    }

    StretchPlanner(YardInput yard, YardNeeds needs) {
        this.yard = yard;
        this.needs = needs;
    }

    /** Load of a stretch, charged by the yard's policy; where prices decide at full power, to be scheduled. */
    StretchLoad of(ServiceMonth service, StretchKind kind) {
        StepGrid grid = grid(kind);
        List<BusNeed> asked = needs.on(service, kind);
        YardCharging charging = YardCharging.waiting(stretch(service, kind, asked), yard.ports(), yard.rule());
        List<double[]> heat = new ArrayList<>();
        for (int bus = 0; bus < asked.size(); bus++) {
            heat.add(heatKw(asked.get(bus), grid, StretchLoad.efficiency(charging, bus)));
        }
        return new StretchLoad(service, kind, charging, charging.schedule(), heat, yard.standbyKw(),
                yard.building().through(service.month(), kind));
    }

    /** All stretches of the year with the buses that stand and are to be charged. */
    Stream<YardStretch> all() {
        return yard.calendar().months().stream().flatMap(service -> service.times().keySet().stream().sorted()
                .map(kind -> stretch(service, kind, needs.on(service, kind))));
    }

    private YardStretch stretch(ServiceMonth service, StretchKind kind, List<BusNeed> asked) {
        StepGrid grid = grid(kind);
        List<PlugIn> plugIns = new ArrayList<>();
        for (int bus = 0; bus < asked.size(); bus++) {
            for (BusNeed.Stay stay : asked.get(bus).stays()) {
                plugIns.add(plugIn(bus, stay, grid.lengthMin()));
            }
        }
        return new YardStretch(service.times().get(kind), grid, plugIns, yard.swaps().of(kind.days().size()));
    }

    private StepGrid grid(StretchKind kind) {
        return StepGrid.ofDays(kind.days().size(), yard.stepMin());
    }

    /** A bus that comes after the end of the stretch comes as it did before its start. */
    private PlugIn plugIn(int bus, BusNeed.Stay stay, double lengthMin) {
        YardBus of = yard.buses().get(bus);
        double turnMin = Math.floor(stay.fromMin() / lengthMin) * lengthMin;
        return new PlugIn(bus, of.name(), stay.fromMin() - turnMin, stay.toMin() - turnMin,
                stay.chargeByMin() - turnMin, stay.batteryKwh(), stay.leastKwh(), stay.endShare(),
                BusAcceptance.of(of.acKw(), of.dcKw(), of.battery(), of.health(), stay.packC())
                        .besideHeat(stay.heatKw()));
    }

    /** Mean power of each step, so that the energy is exact; a time over the end of the stretch goes on at its start. */
    private static double[] heatKw(BusNeed need, StepGrid grid, double efficiency) {
        double[] kw = new double[grid.steps()];
        for (BusNeed.Heat heat : need.heat()) {
            int last = (int) Math.ceil(heat.toMin() / grid.stepMin());
            for (int step = (int) Math.floor(heat.fromMin() / grid.stepMin()); step < last; step++) {
                double minutes = Math.min(heat.toMin(), (step + 1) * grid.stepMin()) - Math.max(heat.fromMin(), step * grid.stepMin());
                kw[Math.floorMod(step, grid.steps())] += heat.kw() / efficiency * minutes / grid.stepMin();
            }
        }
        return kw;
    }
}
