package org.amberyard.core.yard;

import java.lang.ref.WeakReference;
import java.util.ArrayList;
import java.util.List;
import org.amberyard.core.charging.BusAcceptance;
import org.amberyard.core.charging.PlugIn;
import org.amberyard.core.charging.StepGrid;

/**
 * What a bus needs on a stretch, with all that follows from it whoever stands beside the bus; worked out once. Safe for use from
 * several threads.
 */
final class StretchNeed {
    private final YardBus bus;
    private final BusNeed need;
    private final List<BusAcceptance> acceptances;
    private volatile Heat heat = new Heat(null, Double.NaN, new WeakReference<>(null));
    private volatile Placed placed = new Placed(-1, Double.NaN, List.of());

    /** Its stays among those of a yard, which mostly are asked for at the same place again. */
    private record Placed(int place, double lengthMin, List<PlugIn> plugIns) {
    }

    /**
     * The heat that was asked for last.
     *
     * @param atMeter held weakly, because the figures of all buses of a large yard would fill the memory; found again they are the same
     */
    private record Heat(StepGrid grid, double efficiency, WeakReference<MeterHeat> atMeter) {
        boolean is(StepGrid otherGrid, double otherEfficiency) {
            return efficiency == otherEfficiency && otherGrid.equals(grid);
        }
    }

    StretchNeed(YardBus bus, BusNeed need) {
        this.bus = bus;
        this.need = need;
        this.acceptances = need.stays().stream().map(this::acceptance).toList();
    }

    private BusAcceptance acceptance(BusNeed.Stay stay) {
        return BusAcceptance.of(bus.acKw(), bus.dcKw(), bus.battery(), bus.health(), stay.packC()).besideHeat(stay.heatKw());
    }

    /** Heat behind a port of an efficiency. */
    MeterHeat heat(StepGrid grid, double efficiency) {
        Heat last = heat;
        MeterHeat known = last.is(grid, efficiency) ? last.atMeter.get() : null;
        if (known == null) {
            known = MeterHeat.of(need, grid, efficiency);
            heat = new Heat(grid, efficiency, new WeakReference<>(known));
        }
        return known;
    }

    /**
     * Adds its stays to those of a yard. A bus that comes after the end of the stretch comes as it did before its start.
     *
     * @param place its place among the buses of the yard
     */
    void addTo(List<PlugIn> plugIns, int place, double lengthMin) {
        Placed known = placed;
        if (known.place != place || known.lengthMin != lengthMin) {
            known = new Placed(place, lengthMin, plugIns(place, lengthMin));
            placed = known;
        }
        plugIns.addAll(known.plugIns);
    }

    private List<PlugIn> plugIns(int place, double lengthMin) {
        List<PlugIn> plugIns = new ArrayList<>(acceptances.size());
        for (int number = 0; number < acceptances.size(); number++) {
            BusNeed.Stay stay = need.stays().get(number);
            double turnMin = Math.floor(stay.fromMin() / lengthMin) * lengthMin;
            plugIns.add(new PlugIn(place, bus.name(), stay.fromMin() - turnMin, stay.toMin() - turnMin, stay.chargeByMin() - turnMin,
                    stay.batteryKwh(), stay.leastKwh(), stay.endShare(), acceptances.get(number)));
        }
        return plugIns;
    }
}
