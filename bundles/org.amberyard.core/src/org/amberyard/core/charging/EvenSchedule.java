package org.amberyard.core.charging;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * The schedule within demand levels that costs least, and of these the evenest: price by price from the lowest, the load at the
 * meter is brought to the lowest peak that still draws as much at that price, then likewise in the spans that this peak does not
 * hold. Within the loads so found buses charge as early as they may, those that leave first before the others. No energy moves
 * to another price and no demand rises, so the bill stays.
 */
final class EvenSchedule {
    private static final double RELATIVE_TOLERANCE = 1e-12;
    /** Power by which loads may differ from the even ones, so that rounding leaves no session short. */
    private static final double SLACK_KW = 1e-9;

    private final StretchProblem problem;
    private final ReducedStretch stretch;
    private final ChargeFlow flow;
    private final double[] roomKwh;
    private final double tolerance;

    private EvenSchedule(StretchProblem problem, ReducedStretch stretch, MonthProblem month, double[] levelsKw) {
        this.problem = problem;
        this.stretch = stretch;
        StretchFlow levels = new StretchFlow(problem, stretch, month.siteLimitKw(), levelsKw.length);
        flow = levels.flow();
        double[] powerKwh = powerKwh();
        roomKwh = IntStream.range(0, flow.spans)
                .mapToDouble(span -> Math.min(levels.roomKwh(span, levelsKw), powerKwh[span])).toArray();
        tolerance = RELATIVE_TOLERANCE * (1 + stretch.kwh());
    }

    /** Energy of all sessions of each span at full power, kWh. */
    private double[] powerKwh() {
        double[] powerKwh = new double[flow.spans];
        for (int session = 0; session < flow.sessions; session++) {
            for (int span : stretch.spansOfSession().get(session)) {
                powerKwh[span] += stretch.sessions().get(session).limitKw() * stretch.spans().get(span).hours(session);
            }
        }
        return powerKwh;
    }

    /** Schedules the stretches of a month, kW by session and step; the prices of its demands make no difference. */
    static List<double[][]> of(DeliverableMonth month, double[] levelsKw) {
        double[] slackKw = levelsKw.clone();
        for (int charge = 0; charge < slackKw.length; charge++) {
            slackKw[charge] += SLACK_KW;
        }
        MonthProblem problem = month.problem();
        return IntStream.range(0, month.flows().size()).mapToObj(place -> new EvenSchedule(problem.stretches().get(place),
                month.flows().get(place).stretch(), problem, slackKw).kw()).toList();
    }

    private double[][] kw() {
        for (int price = 0; price < stretch.prices(); price++) {
            even(IntStream.range(stretch.priceStarts()[price], stretch.priceStarts()[price + 1]).boxed().toList());
        }
        double[] loads = IntStream.range(0, flow.spans).mapToDouble(flow::spanKwh).toArray();
        flow.reset();
        for (int span = 0; span < loads.length; span++) {
            flow.limitSpan(span, Math.min(roomKwh[span], loads[span] + SLACK_KW * stretch.spans().get(span).hours()));
        }
        flow.grow();
        return spread();
    }

    private void even(List<Integer> spans) {
        spans.forEach(span -> flow.limitSpan(span, roomKwh[span]));
        flow.grow();
        double target = flow.kwh();
        List<Integer> free = new ArrayList<>(spans);
        while (!free.isEmpty()) {
            List<Integer> held = heldAtLowestPeak(free, target);
            held.forEach(span -> flow.limitSpan(span, flow.spanKwh(span)));
            free.removeAll(held);
        }
    }

    /**
     * Brings free spans to the lowest peak with which the flow reaches the target and gives those that hold it there. Each cut of
     * a lower peak names the spans that must rise, and how far at least.
     */
    private List<Integer> heldAtLowestPeak(List<Integer> free, double target) {
        List<Integer> held = List.copyOf(free);
        double peakKw = -Double.MAX_VALUE;
        double shortKwh = target - flow.kwh();
        while (true) {
            double higherKw = peakKw(held, spanKwh(held) + shortKwh);
            if (!(higherKw > peakKw + RELATIVE_TOLERANCE * Math.abs(higherKw))) {
                return held;
            }
            peakKw = higherKw;
            for (int span : free) {
                flow.limitSpan(span, Math.min(roomKwh[span], roomBelowKwh(span, peakKw)));
            }
            flow.grow();
            shortKwh = target - flow.kwh();
            List<Integer> rising = free.stream().filter(flow::heldByLimit).toList();
            if (shortKwh <= tolerance || rising.isEmpty()) {
                return held;
            }
            held = rising;
        }
    }

    private double spanKwh(List<Integer> spans) {
        return spans.stream().mapToDouble(flow::spanKwh).sum();
    }

    private double roomBelowKwh(int span, double peakKw) {
        return Math.max(0, peakKw - stretch.spans().get(span).baseKw()) * stretch.spans().get(span).hours();
    }

    /** Lowest peak at which spans can draw an energy together, kW. */
    private double peakKw(List<Integer> spans, double kwh) {
        double[] bends = spans.stream().flatMapToDouble(span -> {
            ReducedStretch.Span one = stretch.spans().get(span);
            return DoubleStream.of(one.baseKw(), one.baseKw() + roomKwh[span] / one.hours());
        }).sorted().toArray();
        double below = 0;
        for (int bend = 1; kwh > 0 && bend < bends.length; bend++) {
            double atBend = 0;
            for (int span : spans) {
                atBend += Math.min(roomKwh[span], roomBelowKwh(span, bends[bend]));
            }
            if (atBend >= kwh) {
                return bends[bend - 1] + (bends[bend] - bends[bend - 1]) * (kwh - below) / (atBend - below);
            }
            below = atBend;
        }
        return bends[kwh > 0 ? bends.length - 1 : 0];
    }

    private double[][] spread() {
        double[][] kw = new double[problem.sessions().size()][problem.steps()];
        for (int session = 0; session < flow.sessions; session++) {
            double sessionKwh = flow.sessionKwh(session);
            for (int span : stretch.spansOfSession().get(session)) {
                double share = flow.kwh(session, span) / sessionKwh / stretch.spans().get(span).hours();
                for (int member : stretch.members().get(session)) {
                    for (int step : stretch.spans().get(span).steps()) {
                        kw[member][step] = share * problem.sessions().get(member).meterKwh();
                    }
                }
            }
        }
        return kw;
    }
}
