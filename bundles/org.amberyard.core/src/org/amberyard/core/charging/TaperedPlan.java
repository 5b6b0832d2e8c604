package org.amberyard.core.charging;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.amberyard.core.battery.LeastCharge;
import org.amberyard.core.math.CompensatedSum;

/**
 * Makes a planned schedule one that the packs can take.
 *
 * <p>What a pack cannot take at a step, because it is nearer to full than a bus that is only just ready in time, moves to its
 * next steps, as far as no billed demand rises; where then too little time would be left for the taper, the bus charges earlier
 * than planned, as late as it can. Ports whose plugs share power keep to it, buses that leave first going first, and all keep to
 * the limit of the site.
 */
final class TaperedPlan {
    /** Energy that a plan lacks by the rounding of its solver, kWh. */
    static final double SOLVER_ROUNDING_KWH = 1e-4;

    private final YardCharging charging;
    private final double[][] sessionKw;
    private final SpareKw spare;
    private final StepGrid grid;
    private double movedKwh;

    /**
     * @param sessionKw the plan, kW
     * @param spare what it leaves; changed by what is drawn otherwise
     */
    TaperedPlan(YardCharging charging, double[][] sessionKw, SpareKw spare) {
        this.charging = charging;
        this.sessionKw = sessionKw;
        this.spare = spare;
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
            charges.sort(Comparator.comparingDouble((PlugCharge c) -> c.plugged.chargeToMin())
                    .thenComparingInt(c -> c.plugged.plugIn().bus()));
            double[] spareKwh = spareKwh(charging.units().get(unit), charges, sessionOf);
            charges.forEach(c -> follow(c, sessionKw[sessionOf[c.plugged.place()]], spareKwh));
        }
        return run.schedule(movedKwh);
    }

    /** Energy at the meter that a port could give beyond the plan, by step, kWh; without end where its plugs have their own power. */
    private double[] spareKwh(PortUnit unit, List<PlugCharge> charges, int[] sessionOf) {
        double[] spare = new double[grid.steps()];
        if (!PolicyRun.sharesPower(unit, charges)) {
            Arrays.fill(spare, Double.POSITIVE_INFINITY);
            return spare;
        }
        for (int step = 0; step < spare.length; step++) {
            spare[step] = unit.port().powerKw() * grid.stepHours();
            for (PlugCharge charge : charges) {
                spare[step] -= sessionKw[sessionOf[charge.plugged.place()]][step] * grid.stepHours();
            }
        }
        return spare;
    }

    private void follow(PlugCharge charge, double[] planKw, double[] spareKwh) {
        double targetShare = targetShare(charge, planKw);
        LeastCharge least = charge.curve.leastCharge(targetShare, charge.limitKw);
        double hurryMin = charge.plugged.chargeToMin() - 60 * charge.curve.hours(charge.chargeShare(), targetShare,
                charge.limitKw);
        int from = (int) Math.floor(charge.plugged.fromMin() / grid.stepMin());
        int to = (int) Math.ceil(charge.plugged.chargeToMin() / grid.stepMin());
        double owedKwh = 0;
        for (int running = from, step = grid.wrapped(from); running < to; running++, step = grid.next(step)) {
            double plannedKwh = running < from + grid.steps() ? planKw[step] * grid.stepHours() : 0;
            double endMin = Math.min(charge.plugged.chargeToMin(), (running + 1) * grid.stepMin());
            if (plannedKwh + owedKwh > 0 || endMin > hurryMin) {
                double wishKwh = plannedKwh + Math.min(owedKwh, Math.max(0, spare.belowDemand()[step]) * grid.stepHours());
                double mostKwh = plannedKwh + Math.min(spareKwh[step], spare.belowLimit()[step] * grid.stepHours());
                double share = share(charge, running, wishKwh, mostKwh, targetShare, least);
                double tookKwh = (share - charge.chargeShare()) * charge.kwhPerShare;
                charge.reach(share, running);
                owedKwh += plannedKwh - tookKwh;
                movedKwh += Math.abs(tookKwh - plannedKwh) / 2;
                spareKwh[step] += plannedKwh - tookKwh;
                spare.belowDemand()[step] += (plannedKwh - tookKwh) / grid.stepHours();
                spare.belowLimit()[step] += (plannedKwh - tookKwh) / grid.stepHours();
            }
        }
    }

    /** What full power can store; less where the plan gives up some of it, because the site does not have the power. */
    private double targetShare(PlugCharge charge, double[] planKw) {
        double storableShare = charging.schedule().endShares()[charge.plugged.place()];
        double plannedKwh = CompensatedSum.of(planKw) * grid.stepHours();
        double plannedShare = charge.chargeShare() + plannedKwh / charge.kwhPerShare;
        return (storableShare - plannedShare) * charge.kwhPerShare > SOLVER_ROUNDING_KWH ? plannedShare : storableShare;
    }

    /**
     * State of charge after a step: as wished, but not so low that full power could not make it up, nor what cannot be. Bounds
     * that make no difference are not worked out.
     */
    private double share(PlugCharge charge, int running, double wishKwh, double mostKwh, double targetShare,
            LeastCharge least) {
        double before = charge.chargeShare();
        if (targetShare <= before) {
            return before;
        }
        double endMin = Math.min(charge.plugged.chargeToMin(), (running + 1) * grid.stepMin());
        double wished = before + wishKwh / charge.kwhPerShare;
        double most = Math.min(before + mostKwh / charge.kwhPerShare, targetShare);
        double wanted = wished >= most ? wished : Math.max(wished, least.share((charge.plugged.chargeToMin() - endMin) / 60));
        if (Math.min(wanted, most) <= before) {
            return before;
        }
        double startMin = Math.max(charge.plugged.fromMin(), running * grid.stepMin());
        double takes = charge.after(charge.limitKw, (endMin - startMin) / 60);
        return Math.max(before, Math.min(wanted, Math.min(takes, most)));
    }
}
