package org.amberyard.core.charging;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.amberyard.core.battery.LeastCharge;
import org.amberyard.core.battery.TaperCurve;

/**
 * The session that a bus at its plug is in the least-cost problem: from the step in which it comes to that in which it leaves,
 * with the part of its power that it can draw in each. A bus that makes room at once has a step in which it draws
 * nothing.
 *
 * <p>In a step that it stands only in part it draws for that time. And what a pack takes falls as it fills: a bus that is to
 * leave with an energy must in every moment be at least so full that full power brings the rest, so it draws in no step more
 * than a pack that is just so full takes. Every possible schedule keeps to that, so no bill is left out; and a schedule that
 * keeps to it and does not rise towards the departure is one that the pack can take.
 */
final class PlugSession {
    /** Parts of the full power so near to all of it that rounding makes the difference. */
    private static final double ROUNDING = 1e-9;

    private final Plugged at;
    private final StepGrid grid;
    private final TaperCurve curve;
    private final double batteryKw;
    private final double endShare;
    private final double startShare;
    private final double limitKw;
    private final double efficiency;
    private final int from;
    private final int to;

    /**
     * @param endShare state of charge that full power reaches
     */
    PlugSession(Plugged at, PortUnit unit, double endShare, StepGrid grid) {
        this.at = at;
        this.grid = grid;
        this.endShare = endShare;
        curve = at.plugIn().acceptance().curve();
        batteryKw = at.plugIn().acceptance().batteryKw(unit.port());
        startShare = at.plugIn().startShare();
        limitKw = Math.min(batteryKw, curve.acceptanceKw(startShare));
        efficiency = unit.port().efficiency();
        from = (int) Math.floor(at.fromMin() / grid.stepMin());
        to = Math.max(from + 1, Math.min(from + grid.steps(), (int) Math.ceil(at.chargeToMin() / grid.stepMin())));
    }

    /** The session at a cabinet or on its own power. */
    Session at(int cabinet) {
        double meterKwh = (endShare - startShare) * curve.usableKwh() / efficiency;
        int first = grid.wrapped(from);
        return new Session(first, first + to - from, meterKwh, limitKw / efficiency, cabinet, firstShare(), lastShares());
    }

    /** A bus that stands nearly a whole turn leaves in the step in which it came. */
    private double firstShare() {
        return Math.min(1, stands(from) + Math.max(0, at.chargeToMin() - to * grid.stepMin()) / grid.stepMin());
    }

    private double stands(int step) {
        return (Math.min(at.chargeToMin(), (step + 1) * grid.stepMin()) - Math.max(at.fromMin(), step * grid.stepMin()))
                / grid.stepMin();
    }

    private List<Double> lastShares() {
        List<Double> shares = new ArrayList<>();
        for (int step = to - 1; limitKw > 0 && step >= from; step--) {
            double stands = stands(step);
            double share = Math.min(stands, takenKw(step) / limitKw);
            boolean whole = share >= stands * (1 - ROUNDING);
            if (whole && stands >= 1 - ROUNDING) {
                break;
            }
            shares.add(whole ? stands : share);
        }
        Collections.reverse(shares);
        return shares;
    }

    /** Mean power into the battery at full power in a step that begins with the least charge that suffices, kW. */
    private double takenKw(int step) {
        double beginMin = Math.max(at.fromMin(), step * grid.stepMin());
        double endMin = Math.min(at.chargeToMin(), (step + 1) * grid.stepMin());
        LeastCharge toLeave = curve.leastCharge(endShare, batteryKw);
        double least = toLeave.share((at.chargeToMin() - beginMin) / 60);
        double after = least >= startShare ? toLeave.share((at.chargeToMin() - endMin) / 60)
                : curve.endShare(startShare, batteryKw, (endMin - beginMin) / 60);
        return (after - Math.max(least, startShare)) * curve.usableKwh() / grid.stepHours();
    }
}
