package org.amberyard.core.charging;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The most energy that a stretch of days can take at each price or below, by the demand levels. Spans are opened price by price
 * and the flow grown each time; growing takes no energy out of a span that was open before.
 */
final class StretchFlow {
    private static final double SHARE_OF_ROUNDING = 1e-11;

    private final ReducedStretch stretch;
    private final ChargeFlow flow;
    private final double siteLimitKw;
    private final int charges;
    private final double[] kwhBefore;
    private final double[][] slopeHours;
    private final double[] constantKwh;

    StretchFlow(StretchProblem problem, ReducedStretch stretch, double siteLimitKw, int charges) {
        this.stretch = stretch;
        this.siteLimitKw = siteLimitKw;
        this.charges = charges;
        flow = new ChargeFlow(stretch, problem.cabinetKw());
        kwhBefore = new double[flow.sessions * flow.spans];
        slopeHours = new double[stretch.prices()][charges];
        constantKwh = new double[stretch.prices()];
    }

    /**
     * Finds the flows at demand levels. Afterwards {@link #slopeHours} and {@link #constantKwh} give an upper bound of the energy
     * at each price or below that is linear in the levels and exact at these.
     */
    void evaluate(double[] levelsKw) {
        flow.reset();
        for (int price = 0; price < stretch.prices(); price++) {
            int from = stretch.priceStarts()[price];
            int to = stretch.priceStarts()[price + 1];
            for (int span = from; span < to; span++) {
                flow.limitSpan(span, roomKwh(span, levelsKw));
            }
            chargeAsBefore(from, to);
            flow.grow();
            bound(price, levelsKw);
        }
        flow.copyTo(kwhBefore);
    }

    /** Starts from the flow found at the levels before, as far as it still has room: the largest flow is then near. */
    private void chargeAsBefore(int from, int to) {
        for (int session = 0; session < flow.sessions; session++) {
            for (int span = from; span < to; span++) {
                if (kwhBefore[session * flow.spans + span] > 0) {
                    flow.chargeUpTo(session, span, kwhBefore[session * flow.spans + span]);
                }
            }
        }
    }

    private void bound(int price, double[] levelsKw) {
        double[] slope = slopeHours[price];
        Arrays.fill(slope, 0);
        double constant = flow.cutKwhBesideSpans();
        for (int span = 0; span < stretch.priceStarts()[price + 1]; span++) {
            if (flow.heldByLimit(span)) {
                double hours = stretch.spans().get(span).hours();
                int charge = bindingCharge(span, levelsKw);
                if (charge >= 0) {
                    slope[charge] += hours;
                    constant -= stretch.spans().get(span).baseKw() * hours;
                } else {
                    constant += roomKwh(span, levelsKw);
                }
            }
        }
        constantKwh[price] = constant;
    }

    /** Energy that the demand levels and the site limit leave to a span above its fixed load, kWh. */
    double roomKwh(int span, double[] levelsKw) {
        ReducedStretch.Span one = stretch.spans().get(span);
        int charge = bindingCharge(span, levelsKw);
        double limitKw = charge >= 0 ? levelsKw[charge] : siteLimitKw;
        return Math.max(0, limitKw - one.baseKw()) * one.hours();
    }

    private int bindingCharge(int span, double[] levelsKw) {
        int binding = -1;
        double lowestKw = siteLimitKw;
        for (int charge = 0; charge < charges; charge++) {
            if ((stretch.spans().get(span).demandSet() >> charge & 1) != 0 && levelsKw[charge] < lowestKw) {
                lowestKw = levelsKw[charge];
                binding = charge;
            }
        }
        return binding;
    }

    /** What the sessions of the stretch, the given of its month, lack at demand levels. */
    List<SessionShortfall> shortfalls(int place, StretchProblem problem, double[] levelsKw) {
        evaluate(levelsKw);
        List<SessionShortfall> shortfalls = new ArrayList<>();
        for (int session = 0; session < stretch.sessions().size(); session++) {
            double neededKwh = stretch.sessions().get(session).meterKwh();
            double lackingShare = 1 - flow.sessionKwh(session) / neededKwh;
            if (lackingShare > SHARE_OF_ROUNDING) {
                for (int member : stretch.members().get(session)) {
                    shortfalls.add(new SessionShortfall(place, member, lackingShare * problem.sessions().get(member).meterKwh()));
                }
            }
        }
        return shortfalls;
    }

    double[] slopeHours(int price) {
        return slopeHours[price];
    }

    double constantKwh(int price) {
        return constantKwh[price];
    }

    /** The bound of a price at demand levels, kWh. */
    double boundKwh(int price, double[] levelsKw) {
        double kwh = constantKwh[price];
        for (int charge = 0; charge < charges; charge++) {
            kwh += slopeHours[price][charge] * levelsKw[charge];
        }
        return kwh;
    }

    ChargeFlow flow() {
        return flow;
    }

    ReducedStretch stretch() {
        return stretch;
    }
}
