package org.amberyard.charts;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.core.depot.ChargeWindow;
import org.amberyard.core.duty.BlockCheck.Moment;
import org.amberyard.core.duty.DayBlock;
import org.amberyard.core.plan.BusDay;

/**
 * State of charge through a bus's day as a line: straight between departures and arrivals, level from the last arrival to the
 * hours of the night in which buses are charged, straight through these.
 *
 * @param points points of the line, by time
 * @param charging times in which the bus takes in energy
 */
record ChargePath(List<Moment> points, List<Charging> charging) {

    /**
     * A time at the plug.
     *
     * @param fromMin start, minutes after midnight
     * @param toMin end, minutes after midnight; beyond 1,440 on the next day
     * @param gainShare energy taken in over the pack's usable energy
     */
    record Charging(double fromMin, double toMin, double gainShare) {
    }

    static ChargePath of(BusDay day, ChargeWindow window) {
        List<Moment> moments = day.moments();
        List<Charging> charging = new ArrayList<>();
        for (int arrival = 1; arrival + 2 < moments.size(); arrival += 2) {
            add(charging, moments.get(arrival), moments.get(arrival + 1));
        }
        List<Moment> night = night(moments, window);
        add(charging, night.get(0), night.get(1));
        List<Moment> points = new ArrayList<>(moments.subList(0, moments.size() - 1));
        points.addAll(night);
        points.add(moments.get(moments.size() - 1));
        return new ChargePath(points, charging);
    }

    private static void add(List<Charging> charging, Moment from, Moment to) {
        if (to.chargeShare() > from.chargeShare()) {
            charging.add(new Charging(from.minute(), to.minute(), to.chargeShare() - from.chargeShare()));
        }
    }

    /** Start and end of charging in the night. */
    private static List<Moment> night(List<Moment> moments, ChargeWindow window) {
        Moment arrived = moments.get(moments.size() - 2);
        Moment next = moments.get(moments.size() - 1);
        boolean afterMidnight = window.startMin() + DayBlock.DAY_MIN < next.minute();
        double start = Math.max(arrived.minute(), window.startMin() + (afterMidnight ? DayBlock.DAY_MIN : 0));
        double end = Math.min(next.minute(), start + window.hours() * 60);
        return List.of(new Moment(Math.min(start, end), arrived.chargeShare(), arrived.floorShare()),
                new Moment(end, next.chargeShare(), next.floorShare()));
    }
}
