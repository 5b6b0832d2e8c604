package org.amberyard.core.charging;

import java.util.Arrays;

/**
 * The energy of a stretch of days as a flow, kWh: from a source to each session (its energy), on to each span in which it is
 * plugged in (its largest power), through the cabinet of that span (its power) and on to a sink (what the span may take).
 */
final class StretchNetwork {
    private static final double RELATIVE_TOLERANCE = 1e-13;

    private final ReducedStretch stretch;
    private final FlowNetwork network;
    private final int sessions;
    private final int spans;
    private final int firstSpanArc;
    private final int[] firstPlug;
    private final int[] plugSession;
    private final int[] plugArc;
    private final int[] plugCabinetArc;
    private final Arcs arcs = new Arcs();

    /** Arcs while they are collected. */
    private static final class Arcs {
        private int[] tails = new int[64];
        private int[] heads = new int[64];
        private double[] capacities = new double[64];
        private int count;

        int add(int tail, int head, double capacity) {
            if (count == tails.length) {
                tails = Arrays.copyOf(tails, 2 * count);
                heads = Arrays.copyOf(heads, 2 * count);
                capacities = Arrays.copyOf(capacities, 2 * count);
            }
            tails[count] = tail;
            heads[count] = head;
            capacities[count] = capacity;
            return count++;
        }
    }

    /** A network without flow whose spans take nothing yet. */
    StretchNetwork(ReducedStretch stretch, double[] cabinetKw) {
        this.stretch = stretch;
        sessions = stretch.sessions().size();
        spans = stretch.spans().size();
        firstPlug = new int[spans + 1];
        stretch.spansOfSession().forEach(present -> present.forEach(span -> firstPlug[span + 1]++));
        Arrays.parallelPrefix(firstPlug, Integer::sum);
        plugSession = new int[firstPlug[spans]];
        plugArc = new int[firstPlug[spans]];
        plugCabinetArc = new int[firstPlug[spans]];
        double largestKwh = 1;
        for (int session = 0; session < sessions; session++) {
            arcs.add(0, 1 + session, stretch.sessions().get(session).meterKwh());
            largestKwh = Math.max(largestKwh, stretch.sessions().get(session).meterKwh());
        }
        int nodes = connect(cabinetKw) + 1;
        firstSpanArc = arcs.count;
        for (int span = 0; span < spans; span++) {
            arcs.add(spanNode(span), nodes - 1, 0);
        }
        network = new FlowNetwork(nodes, Arrays.copyOf(arcs.tails, arcs.count), Arrays.copyOf(arcs.heads, arcs.count),
                Arrays.copyOf(arcs.capacities, arcs.count), RELATIVE_TOLERANCE * largestKwh);
    }

    private int connect(double[] cabinetKw) {
        int nodes = 1 + sessions + spans;
        int[][] cabinetArcs = new int[cabinetKw.length][spans];
        int[] filled = Arrays.copyOf(firstPlug, spans);
        for (int session = 0; session < sessions; session++) {
            int cabinet = stretch.sessions().get(session).cabinet();
            for (int span : stretch.spansOfSession().get(session)) {
                double hours = stretch.spans().get(span).hours();
                int plug = filled[span]++;
                int head = spanNode(span);
                plugCabinetArc[plug] = -1;
                if (cabinet != Session.OWN_POWER) {
                    if (cabinetArcs[cabinet][span] == 0) {
                        cabinetArcs[cabinet][span] = arcs.add(nodes++, head, cabinetKw[cabinet] * hours);
                    }
                    plugCabinetArc[plug] = cabinetArcs[cabinet][span];
                    head = arcs.tails[plugCabinetArc[plug]];
                }
                plugSession[plug] = session;
                plugArc[plug] = arcs.add(1 + session, head, stretch.sessions().get(session).limitKw() * hours);
            }
        }
        return nodes;
    }

    private int spanNode(int span) {
        return 1 + sessions + span;
    }

    int spans() {
        return spans;
    }

    int firstPlug(int span) {
        return firstPlug[span];
    }

    int session(int plug) {
        return plugSession[plug];
    }

    void reset() {
        network.reset();
    }

    double grow() {
        return network.grow();
    }

    double plugKwh(int plug) {
        return network.flow(plugArc[plug]);
    }

    double spanKwh(int span) {
        return network.flow(firstSpanArc + span);
    }

    double sessionKwh(int session) {
        return network.flow(session);
    }

    /** Energy of all sessions together. */
    double kwh() {
        double kwh = 0;
        for (int session = 0; session < sessions; session++) {
            kwh += sessionKwh(session);
        }
        return kwh;
    }

    /** Lets a span take so much; what flows above it is taken back, from its last sessions first. */
    void limitSpan(int span, double kwh) {
        double excess = spanKwh(span) - kwh;
        for (int plug = firstPlug[span + 1] - 1; excess > 0 && plug >= firstPlug[span]; plug--) {
            double taken = Math.min(excess, plugKwh(plug));
            add(plug, span, -taken);
            excess -= taken;
        }
        network.setRoom(firstSpanArc + span, Math.max(0, kwh - spanKwh(span)));
    }

    /** Charges as much of the wished energy of a plug as has room, and gives how much that is. */
    double charge(int plug, int span, double wishedKwh) {
        double kwh = Math.min(Math.min(wishedKwh, network.room(plugSession[plug])),
                Math.min(network.room(plugArc[plug]), network.room(firstSpanArc + span)));
        if (plugCabinetArc[plug] >= 0) {
            kwh = Math.min(kwh, network.room(plugCabinetArc[plug]));
        }
        add(plug, span, kwh);
        return kwh;
    }

    private void add(int plug, int span, double kwh) {
        network.add(plugSession[plug], kwh);
        network.add(plugArc[plug], kwh);
        if (plugCabinetArc[plug] >= 0) {
            network.add(plugCabinetArc[plug], kwh);
        }
        network.add(firstSpanArc + span, kwh);
    }

    /** True when the span lies on the source's side of the smallest cut of the grown flow: only its own limit holds it. */
    boolean heldByLimit(int span) {
        return network.reached(spanNode(span));
    }

    /** Capacity of the cut without that of the spans that lie on the source's side, kWh. */
    double cutKwhBesideSpans() {
        double kwh = 0;
        for (int arc = 0; arc < firstSpanArc; arc++) {
            if (network.reached(arcs.tails[arc]) && !network.reached(arcs.heads[arc])) {
                kwh += arcs.capacities[arc];
            }
        }
        return kwh;
    }
}
