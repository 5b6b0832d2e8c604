package org.amberyard.core.charging;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Makes a planned schedule one that the packs can take.
 *
 * <p>What a pack cannot take at a step, because it is near full or not yet at its plug, moves to its next steps; where then too
 * little time would be left for the taper, the bus charges earlier than planned, as late as it can. Ports whose plugs share
 * power keep to it, buses that leave first going first.
 */
final class TaperedPlan {
    private final YardCharging charging;
    private final double[][] sessionKw;
    private final StepGrid grid;
    private double movedKwh;

    TaperedPlan(YardCharging charging, double[][] sessionKw) {
        this.charging = charging;
        this.sessionKw = sessionKw;
        this.grid = charging.stretch().grid();
    }

    ChargeSchedule schedule() {
        ScheduleRun run = new ScheduleRun(charging.stretch(), charging.units(), charging.assignment());
        int[] sessionOf = new int[charging.stretch().plugIns().size()];
        for (int session = 0; session < sessionKw.length; session++) {
            sessionOf[charging.assignment().plugged().get(session).place()] = session;
        }
        for (int unit = 0; unit < charging.units().size(); unit++) {
            List<PlugCharge> charges = new ArrayList<>(run.at(unit));
            charges.sort(Comparator.comparingDouble((PlugCharge c) -> c.plugged.toMin())
                    .thenComparingInt(c -> c.plugged.plugIn().bus()));
            double[] spareKwh = spareKwh(charging.units().get(unit), charges, sessionOf);
            charges.forEach(c -> follow(c, sessionKw[sessionOf[c.plugged.place()]], spareKwh));
        }
        return run.schedule(movedKwh);
    }

    /** Energy at the meter that a port could give beyond the plan, by step, kWh. */
    private double[] spareKwh(PortUnit unit, List<PlugCharge> charges, int[] sessionOf) {
        double[] spare = new double[grid.steps()];
        boolean shares = PolicyRun.sharesPower(unit, charges);
        for (int step = 0; step < spare.length; step++) {
            spare[step] = shares ? unit.port().powerKw() * grid.stepHours() : Double.POSITIVE_INFINITY;
            for (PlugCharge charge : charges) {
                spare[step] -= sessionKw[sessionOf[charge.plugged.place()]][step] * grid.stepHours();
            }
        }
        return spare;
    }

    private void follow(PlugCharge charge, double[] planKw, double[] spareKwh) {
        double targetShare = charging.schedule().endShares()[charge.plugged.place()];
        double kwhPerShare = charge.curve.usableKwh() / charge.efficiency;
        int from = (int) Math.floor(charge.plugged.fromMin() / grid.stepMin());
        int to = (int) Math.ceil(charge.plugged.toMin() / grid.stepMin());
        double owedKwh = 0;
        for (int running = from; running < to; running++) {
            int step = grid.wrapped(running);
            double startMin = Math.max(charge.plugged.fromMin(), running * grid.stepMin());
            double endMin = Math.min(charge.plugged.toMin(), (running + 1) * grid.stepMin());
            double plannedKwh = running < from + grid.steps() ? planKw[step] * grid.stepHours() : 0;
            double before = charge.chargeShare();
            double lowest = charge.curve.startShare(targetShare, charge.limitKw, (charge.plugged.toMin() - endMin) / 60);
            double highest = Math.min(charge.after(charge.limitKw, (endMin - startMin) / 60),
                    before + (plannedKwh + spareKwh[step]) / kwhPerShare);
            double wanted = Math.max(lowest, before + (plannedKwh + owedKwh) / kwhPerShare);
            double share = Math.max(before, Math.min(wanted, Math.min(highest, targetShare)));
            charge.reach(share, running);
            double tookKwh = (share - before) * kwhPerShare;
            owedKwh += plannedKwh - tookKwh;
            movedKwh += Math.abs(tookKwh - plannedKwh) / 2;
            spareKwh[step] += plannedKwh - tookKwh;
        }
    }
}
