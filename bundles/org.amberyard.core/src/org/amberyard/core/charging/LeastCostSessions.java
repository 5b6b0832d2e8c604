package org.amberyard.core.charging;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The charging of a stretch as sessions of the least-cost problem, and its solution as a schedule.
 *
 * <p>A session is asked for as much as full power can store; {@link PlugSession} tells what it can draw in each step. What of a
 * solution the packs cannot take all the same {@link TaperedPlan} moves, and {@link LeanedPlan} where that does not do.
 */
public final class LeastCostSessions {
    private final YardCharging charging;
    private final List<Session> sessions = new ArrayList<>();
    private final double[] cabinetKw;

    /** Sessions for the buses at their plugs, in the order of {@link PortAssignment#plugged()}. */
    public LeastCostSessions(YardCharging charging) {
        this.charging = charging;
        int[] cabinets = cabinets();
        int count = 0;
        for (int unit = 0; unit < cabinets.length; unit++) {
            count += cabinets[unit] == Session.OWN_POWER ? 0 : 1;
        }
        this.cabinetKw = new double[count];
        for (Plugged one : charging.assignment().plugged()) {
            PortUnit unit = charging.units().get(one.unit());
            double endShare = charging.schedule().endShares()[one.place()];
            sessions.add(new PlugSession(one, unit, endShare, charging.stretch().grid()).at(cabinets[one.unit()]));
            if (cabinets[one.unit()] != Session.OWN_POWER) {
                cabinetKw[cabinets[one.unit()]] = unit.port().powerKw();
            }
        }
    }

    /** For each port its place among those whose plugs share power. */
    private int[] cabinets() {
        ScheduleRun run = new ScheduleRun(charging.stretch(), charging.units(), charging.assignment());
        int[] cabinets = new int[charging.units().size()];
        int next = 0;
        for (int unit = 0; unit < cabinets.length; unit++) {
            boolean shares = PolicyRun.sharesPower(charging.units().get(unit), run.at(unit));
            cabinets[unit] = shares ? next++ : Session.OWN_POWER;
        }
        return cabinets;
    }

    /** The problem of the stretch; its sessions stand in the order of {@link PortAssignment#plugged()}. */
    public StretchProblem problem(double[] baseKw, double[] pricePerKwh, int[] demandSets) {
        YardStretch stretch = charging.stretch();
        return new StretchProblem(stretch.times(), stretch.grid().stepHours(), baseKw, pricePerKwh, demandSets, sessions,
                Arrays.copyOf(cabinetKw, cabinetKw.length));
    }

    /**
     * The schedule that a solution becomes at the packs.
     *
     * @param sessionKw mean power at the meter by session and step of the stretch, kW
     * @param spare what the plan leaves; not changed
     */
    public ChargeSchedule schedule(double[][] sessionKw, SpareKw spare) {
        return new LeanedPlan(charging, sessionKw, spare).schedule();
    }

    /** A schedule as the power of the sessions by step, kW. */
    public double[][] sessionKw(ChargeSchedule schedule) {
        return charging.assignment().plugged().stream().map(one -> schedule.meterKw()[one.place()]).toArray(double[][]::new);
    }
}
