package org.amberyard.core.charging;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The charging of a stretch as sessions of the least-cost problem, and its solution as a schedule.
 *
 * <p>A session spans the whole steps of the time at the plug; the part steps at its ends are added where the bus could not be
 * ready without them. It is asked for as much as full power can store. The sessions know nothing of the taper; see
 * {@link TaperedPlan} for how the solution is made one that the packs can take.
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
            sessions.add(session(one, unit, cabinets[one.unit()]));
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

    private Session session(Plugged one, PortUnit unit, int cabinet) {
        StepGrid grid = charging.stretch().grid();
        PlugIn stay = one.plugIn();
        double batteryKw = stay.acceptance().batteryKw(unit.port());
        double endShare = charging.schedule().endShares()[one.place()];
        double needMin = 60 * stay.acceptance().curve().hours(stay.startShare(), endShare, batteryKw);
        int from = (int) Math.ceil(one.fromMin() / grid.stepMin());
        int to = (int) Math.floor(one.toMin() / grid.stepMin());
        if ((to - from) * grid.stepMin() < needMin || to <= from) {
            from = (int) Math.floor(one.fromMin() / grid.stepMin());
            to = Math.min(from + grid.steps(), (int) Math.ceil(one.toMin() / grid.stepMin()));
        }
        double meterKwh = (endShare - stay.startShare()) * stay.acceptance().curve().usableKwh() / unit.port().efficiency();
        int first = grid.wrapped(from);
        return new Session(first, first + to - from, meterKwh, stay.acceptance().meterKw(unit.port()), cabinet);
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
     */
    public ChargeSchedule schedule(double[][] sessionKw) {
        return new TaperedPlan(charging, sessionKw).schedule();
    }
}
