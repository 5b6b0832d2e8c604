package org.amberyard.core.charging;

import org.amberyard.core.battery.TaperCurve;

/** State of charge of a bus at its plug, and what it has drawn at the meter step by step. */
final class PlugCharge {
    final Plugged plugged;
    final TaperCurve curve;
    final double efficiency;
    /** Largest power into the battery, kW. */
    final double limitKw;
    final double targetShare;
    /** Energy at the meter for the whole pack, kWh. */
    final double kwhPerShare;
    private final StepGrid grid;
    private final double[] meterKw;
    private double chargeShare;

    PlugCharge(Plugged plugged, PortUnit unit, StepGrid grid, double[] meterKw) {
        this(plugged, unit.port().efficiency(), plugged.plugIn().acceptance().batteryKw(unit.port()), grid, meterKw);
    }

    private PlugCharge(Plugged plugged, double efficiency, double limitKw, StepGrid grid, double[] meterKw) {
        PlugIn stay = plugged.plugIn();
        this.plugged = plugged;
        this.curve = stay.acceptance().curve();
        this.efficiency = efficiency;
        this.limitKw = limitKw;
        this.targetShare = stay.endShare();
        this.kwhPerShare = curve.usableKwh() / efficiency;
        this.chargeShare = stay.startShare();
        this.grid = grid;
        this.meterKw = meterKw;
    }

    /** The same bus as it arrives in another turn of the stretch, whose energy is not booked again. */
    PlugCharge unbooked() {
        return new PlugCharge(plugged, efficiency, limitKw, grid, new double[meterKw.length]);
    }

    double chargeShare() {
        return chargeShare;
    }

    /** When it charges at its plug by a rule. */
    ChargeTimes times(ChargeRule rule) {
        PlugIn stay = plugged.plugIn();
        return rule.times(stay.fromMin(), stay.chargeByMin()).between(plugged.fromMin(), plugged.chargeToMin());
    }

    boolean full() {
        return chargeShare >= targetShare;
    }

    /** Hours to the wanted state of charge at a power, kW. */
    double hoursToFull(double kw) {
        return curve.hours(chargeShare, targetShare, kw);
    }

    /** State of charge after hours at a power, not above the wanted one. */
    double after(double kw, double hours) {
        return Math.min(targetShare, curve.endShare(chargeShare, kw, hours));
    }

    /** Even power that has the bus ready at a moment, kW. */
    double evenKw(double nowMin, double readyMin) {
        return curve.evenKw(chargeShare, targetShare, (readyMin - nowMin) / 60, limitKw);
    }

    /** Books the way to a state of charge on a step. */
    void reach(double share, int runningStep) {
        double meterKwh = (share - chargeShare) * curve.usableKwh() / efficiency;
        meterKw[grid.wrapped(runningStep)] += meterKwh / grid.stepHours();
        chargeShare = share;
    }

    /** Charges at a power that nothing else limits through a time, or until the bus is full. */
    void run(ChargeTimes.Span time, double kw) {
        int step = (int) Math.floor(time.fromMin() / grid.stepMin());
        double nowMin = time.fromMin();
        while (nowMin < time.toMin() && !full() && kw > 0) {
            double nextMin = Math.min(time.toMin(), (step + 1) * grid.stepMin());
            reach(after(kw, (nextMin - nowMin) / 60), step);
            nowMin = nextMin;
            step++;
        }
    }
}
