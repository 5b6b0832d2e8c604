package org.amberyard.core.charging;

import org.amberyard.core.battery.TaperCurve;

/** State of charge of a bus at its plug, and what it has drawn at the meter step by step. */
final class PlugCharge {
    /** Parts of the need so near to all of it that rounding makes the difference. */
    private static final double ROUNDING = 1e-11;
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

    /** The same bus, as full as it is now, that books what it draws on a row of its own. */
    PlugCharge booking(double[] row) {
        PlugCharge other = new PlugCharge(plugged, efficiency, limitKw, grid, row);
        other.chargeShare = chargeShare;
        return other;
    }

    /** Takes over the power of a turn, kW by step at the meter; what is more than the bus needs is not drawn. */
    void take(double[] turnKw) {
        double needKwh = (targetShare - chargeShare) * kwhPerShare;
        double sumKwh = 0;
        for (double kw : turnKw) {
            sumKwh += kw * grid.stepHours();
        }
        double drawn = sumKwh > needKwh ? needKwh / sumKwh : 1;
        for (int step = 0; step < meterKw.length; step++) {
            meterKw[step] = drawn * turnKw[step];
        }
        chargeShare = sumKwh >= needKwh * (1 - ROUNDING) ? targetShare : chargeShare + sumKwh / kwhPerShare;
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
