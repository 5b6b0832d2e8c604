package org.amberyard.core.charging;

import java.util.Arrays;
import java.util.List;

/**
 * Makes a plan one that has the buses ready where their packs cannot take it. At a port whose plugs share power a
 * bus that was to wait may find too little of it left for its taper. The plan at such a port is leaned towards a charge
 * that is known to have them ready, the even one or else that at full power, by about as little as it takes; so demands
 * rise little.
 */
final class LeanedPlan {
    private static final double[] PARTS = {1.0 / 16, 1.0 / 8, 1.0 / 4, 1.0 / 2, 1};

    private final YardCharging charging;
    private final double[][] planKw;
    private final SpareKw spare;

    /**
     * @param charging buses at their plugs, with what they can store
     * @param planKw the plan by session, kW
     * @param spare what it leaves; not changed
     */
    LeanedPlan(YardCharging charging, double[][] planKw, SpareKw spare) {
        this.charging = charging;
        this.planKw = planKw;
        this.spare = spare;
    }

    /** The plan as the packs take it; leaned where that leaves less missing, unless the plan gives up energy itself. */
    ChargeSchedule schedule() {
        ChargeSchedule asPlanned = taken(planKw, spare.copy());
        return missesMore(asPlanned) && bringsAll() ? leaned(asPlanned) : asPlanned;
    }

    private boolean bringsAll() {
        ChargeSchedule full = charging.schedule();
        for (int session = 0; session < planKw.length; session++) {
            double plannedKwh = Arrays.stream(planKw[session]).sum() * full.grid().stepHours();
            double storableKwh = full.meterKwh(charging.assignment().plugged().get(session).place());
            if (storableKwh - plannedKwh > TaperedPlan.SOLVER_ROUNDING_KWH) {
                return false;
            }
        }
        return true;
    }

    private boolean missesMore(ChargeSchedule schedule) {
        return schedule.shortKwh() - charging.schedule().shortKwh() > ChargeSchedule.ROUNDING_KWH;
    }

    private ChargeSchedule taken(double[][] kw, SpareKw left) {
        return new TaperedPlan(charging, kw, left).schedule();
    }

    private ChargeSchedule leaned(ChargeSchedule asPlanned) {
        boolean[] ports = portsThatMiss(asPlanned);
        ChargeSchedule even = charging.by(ChargeRule.of(ChargePolicy.SPREAD)).schedule();
        ChargeSchedule towards = missesMore(even) ? charging.schedule() : even;
        ChargeSchedule best = asPlanned;
        for (double part : PARTS) {
            double[][] kw = leaned(part, towards, ports);
            SpareKw left = spare.less(sum(kw), sum(planKw));
            if (!missesMore(best) || !left.withinLimit()) {
                break;
            }
            ChargeSchedule next = taken(kw, left);
            best = next.shortKwh() < best.shortKwh() ? next : best;
        }
        return best;
    }

    private boolean[] portsThatMiss(ChargeSchedule schedule) {
        boolean[] ports = new boolean[charging.units().size()];
        for (Plugged one : charging.assignment().plugged()) {
            ports[one.unit()] |= schedule.endShares()[one.place()] < charging.schedule().endShares()[one.place()];
        }
        return ports;
    }

    private double[][] leaned(double part, ChargeSchedule towards, boolean[] ports) {
        List<Plugged> plugged = charging.assignment().plugged();
        double[][] kw = new double[planKw.length][];
        for (int session = 0; session < kw.length; session++) {
            Plugged at = plugged.get(session);
            kw[session] = planKw[session].clone();
            for (int step = 0; ports[at.unit()] && step < kw[session].length; step++) {
                kw[session][step] += part * (towards.meterKw()[at.place()][step] - planKw[session][step]);
            }
        }
        return kw;
    }

    private double[] sum(double[][] kw) {
        double[] sum = new double[charging.stretch().grid().steps()];
        for (double[] session : kw) {
            Arrays.setAll(sum, step -> sum[step] + session[step]);
        }
        return sum;
    }
}
