package org.amberyard.core.charging;

import java.util.ArrayList;
import java.util.List;

/**
 * Charging of buses that share power, by a rule of {@link PowerParts}. The parts are set anew at every step, and
 * whenever a bus comes, goes or is full. Where some bus stands at every moment, turn after turn is charged until they repeat
 * ({@link SharedTurns}), so that who stands over the end of the stretch shares with those at its start.
 */
final class SharedRun {
    private final PowerParts parts;
    private final StepGrid grid;
    private final ChargeRule rule;
    private final List<SharingBus> members = new ArrayList<>();

    SharedRun(PowerParts parts, StepGrid grid, ChargeRule rule) {
        this.parts = parts;
        this.grid = grid;
        this.rule = rule;
    }

    void charge(List<PlugCharge> charges) {
        double lengthMin = grid.lengthMin();
        double quietMin = PlugList.quietestMin(charges.stream().map(c -> c.plugged.plugIn()).toList(), lengthMin);
        double[] laterMin = charges.stream().mapToDouble(c -> c.plugged.fromMin() < quietMin ? lengthMin : 0).toArray();
        boolean meets = false;
        for (int place = 0; place < laterMin.length; place++) {
            meets |= charges.get(place).plugged.toMin() + laterMin[place] > quietMin + lengthMin;
        }
        if (meets) {
            new SharedTurns(this, charges, laterMin, quietMin, grid).charge();
        } else {
            for (int place = 0; place < laterMin.length; place++) {
                add(charges.get(place), laterMin[place]);
            }
            run(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
        }
    }

    /** Has a bus take part, so many minutes later than its stay says. */
    void add(PlugCharge charge, double laterMin) {
        members.add(new SharingBus(charge, laterMin, charge.times(rule).later(laterMin)));
    }

    /** Charges those that take part between two moments, after which none does. */
    void run(double fromMin, double toMin) {
        double nowMin = fromMin;
        while (nowMin < toMin) {
            int drawing = ask(nowMin);
            if (drawing == 0) {
                nowMin = nextStart(nowMin);
            } else {
                parts.share(members, drawing);
                int step = (int) Math.floor(nowMin / grid.stepMin());
                double nextMin = Math.min(toMin, nextChange(nowMin, (step + 1) * grid.stepMin()));
                advance(nowMin, nextMin, step);
                nowMin = nextMin;
            }
        }
        members.clear();
    }

    private double nextStart(double nowMin) {
        double next = Double.POSITIVE_INFINITY;
        for (SharingBus member : members) {
            next = Math.min(next, member.times.nextMin(nowMin));
        }
        return next;
    }

    /** Sets what each bus would draw and returns how many draw. */
    private int ask(double nowMin) {
        int drawing = 0;
        for (SharingBus member : members) {
            member.granted = !member.draws(nowMin);
            member.meterKw = 0;
            if (!member.granted) {
                drawing++;
                PlugCharge charge = member.charge;
                double kw = Math.min(charge.limitKw, charge.curve.acceptanceKw(charge.chargeShare()));
                boolean spread = rule.policy() == ChargePolicy.SPREAD;
                member.meterKw = (spread ? Math.min(kw, charge.evenKw(nowMin, member.times.endMin(nowMin)))
                        : kw) / charge.efficiency;
            }
        }
        return drawing;
    }

    private double nextChange(double nowMin, double stepEndMin) {
        double next = stepEndMin;
        for (SharingBus member : members) {
            next = Math.min(next, member.times.nextMin(nowMin));
            if (member.draws(nowMin)) {
                member.fullMin = member.meterKw > 0
                        ? nowMin + 60 * member.charge.hoursToFull(member.meterKw * member.charge.efficiency) : Double.POSITIVE_INFINITY;
                next = Math.min(next, Math.min(member.times.endMin(nowMin), member.fullMin));
            }
        }
        return next;
    }

    private void advance(double nowMin, double nextMin, int step) {
        for (SharingBus member : members) {
            if (member.draws(nowMin) && member.meterKw > 0) {
                PlugCharge charge = member.charge;
                double kw = member.meterKw * charge.efficiency;
                charge.reach(member.fullMin <= nextMin ? charge.targetShare : charge.after(kw, (nextMin - nowMin) / 60), step);
            }
        }
    }
}
