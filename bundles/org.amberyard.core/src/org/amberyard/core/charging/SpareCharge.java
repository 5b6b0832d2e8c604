package org.amberyard.core.charging;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * How far buses may lag behind what they are to be charged. A bus that is charged at once fills up whenever it
 * stands; what is then
 * missing between runs may wait for its last stay of the stretch, the night, as long as the bus has what its runs take.
 */
final class SpareCharge {
    private final List<PlugIn> plugIns;
    private final int[] next;
    private final double[] spareKwh;

    SpareCharge(List<PlugIn> plugIns) {
        this.plugIns = plugIns;
        this.next = new int[plugIns.size()];
        this.spareKwh = new double[plugIns.size()];
        List<Integer> places = PlugList.ordered(plugIns,
                Comparator.comparingInt(PlugIn::bus).thenComparingDouble(PlugIn::fromMin));
        double sum = 0;
        for (int order = 0; order < places.size(); order++) {
            int place = places.get(order);
            boolean last = order + 1 == places.size() || plugIns.get(places.get(order + 1)).bus() != plugIns.get(place)
                    .bus();
            sum += plugIns.get(place).batteryKwh() - plugIns.get(place).leastKwh();
            spareKwh[place] = last ? 0 : Math.max(0, sum);
            next[place] = last ? -1 : places.get(order + 1);
            sum = last ? 0 : sum;
        }
    }

    /** What a bus lacks for its runs when it leaves a place so far behind, kWh. */
    double missingKwh(int place, double behindKwh) {
        double missing = behindKwh - spareKwh[place];
        return missing > ChargeSchedule.ROUNDING_KWH ? missing : 0;
    }

    /** The plug-ins with what a schedule leaves missing and may wait taken in the last stay of each bus. */
    List<PlugIn> waiting(ChargeSchedule schedule) {
        List<PlugIn> waiting = new ArrayList<>(plugIns);
        double[] behindKwh = new double[plugIns.size()];
        double[] missedKwh = new double[plugIns.size()];
        for (int place : PlugList.ordered(plugIns, Comparator.comparingDouble(PlugIn::fromMin))) {
            if (next[place] >= 0) {
                double shortKwh = schedule.shortKwh(plugIns.get(place));
                double behind = behindKwh[place] + shortKwh;
                double missing = Math.min(shortKwh, Math.max(0, missingKwh(place, behind) - missedKwh[place]));
                behindKwh[next[place]] = behind;
                missedKwh[next[place]] = missedKwh[place] + missing;
                wait(waiting, place, shortKwh - missing);
            }
        }
        return waiting;
    }

    private void wait(List<PlugIn> waiting, int place, double kwh) {
        int night = place;
        while (next[night] >= 0) {
            night = next[night];
        }
        waiting.set(place, waiting.get(place).storingLess(kwh));
        waiting.set(night, waiting.get(night).withKwh(waiting.get(night).batteryKwh() + kwh));
    }
}
