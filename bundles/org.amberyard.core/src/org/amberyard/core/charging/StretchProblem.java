package org.amberyard.core.charging;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.core.math.Checks;

/**
 * A stretch of days whose charging is to be scheduled: one school day with the night around it, or the last school day with the
 * free days after it. Its end joins its start, because the next stretch begins like it.
 *
 * @param times how often it stands in the month
 * @param stepHours length of a step, h
 * @param baseKw load that cannot be moved, by step, kW: heat, standby and, on a shared meter, the building
 * @param pricePerKwh price of energy by step, money/kWh, riders and taxes included
 * @param demandSets demand charges that count a step, as bits by their place in {@link MonthProblem#demandPrices}
 * @param sessions charging sessions
 * @param cabinetKw power of shared cabinets, kW at the meter
 */
public record StretchProblem(double times, double stepHours, double[] baseKw, double[] pricePerKwh, int[] demandSets,
        List<Session> sessions, double[] cabinetKw) {

    public StretchProblem {
        Checks.notNegative("how often a stretch stands in the month", times);
        Checks.positive("length of a step, h,", stepHours);
        if (pricePerKwh.length != baseKw.length || demandSets.length != baseKw.length) {
            throw new IllegalArgumentException("a stretch has " + baseKw.length + " fixed loads, " + pricePerKwh.length
                    + " prices and " + demandSets.length + " sets of demand charges but must have one of each for every step");
        }
        sessions = List.copyOf(sessions);
        for (Session session : sessions) {
            check(session, baseKw.length, cabinetKw.length);
        }
    }

    private static void check(Session session, int steps, int cabinets) {
        if (session.fromStep() < 0 || session.fromStep() >= steps || session.toStep() <= session.fromStep()
                || session.toStep() > session.fromStep() + steps) {
            throw new IllegalArgumentException("a session is from step " + session.fromStep() + " to " + session.toStep()
                    + " but must start in the " + steps + " steps of its stretch and be no longer");
        }
        if (session.cabinet() < Session.OWN_POWER || session.cabinet() >= cabinets) {
            throw new IllegalArgumentException("a session is at cabinet " + session.cabinet() + " but must be at one of "
                    + cabinets + ", counted from 0, or at " + Session.OWN_POWER + " for none");
        }
    }

    /** Number of steps. */
    public int steps() {
        return baseKw.length;
    }

    /** The same stretch, standing in the month once. */
    StretchProblem once() {
        return new StretchProblem(1, stepHours, baseKw, pricePerKwh, demandSets, sessions, cabinetKw);
    }

    /** Cost of the energy of a load, each time, money. */
    double energyCost(double[] kw) {
        double cost = 0;
        for (int step = 0; step < kw.length; step++) {
            cost += pricePerKwh[step] * kw[step] * stepHours;
        }
        return cost;
    }

    /** The same stretch without the energy that sessions lack. */
    StretchProblem without(List<SessionShortfall> shortfalls) {
        List<Session> fewer = new ArrayList<>(sessions);
        for (SessionShortfall lacking : shortfalls) {
            Session session = fewer.get(lacking.session());
            fewer.set(lacking.session(), session.withKwh(Math.max(0, session.meterKwh() - lacking.kwh())));
        }
        return new StretchProblem(times, stepHours, baseKw, pricePerKwh, demandSets, fewer, cabinetKw);
    }

    /** True when a demand charge counts a step. */
    boolean counts(int charge, int step) {
        return (demandSets[step] >> charge & 1) != 0;
    }
}
