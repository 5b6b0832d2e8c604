package org.amberyard.core.charging;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/** Buses at their plugs with what they draw, from which the schedule is made. */
final class ScheduleRun {
    private final YardStretch stretch;
    private final double[][] meterKw;
    private final PlugCharge[] charges;

    ScheduleRun(YardStretch stretch, List<PortUnit> units, PortAssignment assignment) {
        int plugIns = stretch.plugIns().size();
        this.stretch = stretch;
        this.meterKw = new double[plugIns][stretch.grid().steps()];
        this.charges = new PlugCharge[plugIns];
        for (Plugged one : assignment.plugged()) {
            charges[one.place()] = new PlugCharge(one, units.get(one.unit()), stretch.grid(), meterKw[one.place()]);
        }
    }

    /** Buses at the plugs of a port, in the order of the plug-ins. */
    List<PlugCharge> at(int unit) {
        List<PlugCharge> found = new ArrayList<>();
        for (PlugCharge charge : charges) {
            if (charge != null && charge.plugged.unit() == unit) {
                found.add(charge);
            }
        }
        return found;
    }

    /** Buses at all plugs, in the order of the plug-ins. */
    List<PlugCharge> all() {
        return Arrays.stream(charges).filter(Objects::nonNull).toList();
    }

    ChargeSchedule schedule(double movedKwh) {
        double[] endShares = new double[charges.length];
        List<ChargeShortfall> shortfalls = new ArrayList<>();
        for (int place = 0; place < charges.length; place++) {
            PlugIn stay = stretch.plugIns().get(place);
            PlugCharge charge = charges[place];
            endShares[place] = charge == null ? stay.startShare() : charge.chargeShare();
            double shortKwh = (stay.endShare() - endShares[place]) * stay.acceptance().curve().usableKwh();
            if (shortKwh > ChargeSchedule.ROUNDING_KWH) {
                double moreHours = charge == null ? Double.POSITIVE_INFINITY : charge.hoursToFull(charge.limitKw);
                shortfalls.add(new ChargeShortfall(stay, shortKwh, moreHours * 60));
            }
        }
        return new ChargeSchedule(stretch.grid(), meterKw, endShares, shortfalls, movedKwh);
    }
}
