package org.amberyard.core.charging;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * A stretch of days with what is equal put together, which changes no bill. Sessions of the same plug-in, departure and cabinet
 * whose energies stand as their largest powers charge as one and are served in proportion to these. Steps of the same price,
 * fixed load, demand charges and sessions with the same part of their power are one span: what is drawn in it can be drawn
 * evenly.
 *
 * @param sessions sessions that take energy, by departure
 * @param members the stretch's sessions in each of them
 * @param spans spans in which something can charge, by price
 * @param spansOfSession spans of each session, in the order of time from its plug-in
 * @param priceStarts first span of each price, from the lowest; ends with the number of spans
 */
record ReducedStretch(List<Session> sessions, List<List<Integer>> members, List<Span> spans, List<List<Integer>> spansOfSession,
        int[] priceStarts) {
    /** Energy that need not be charged, kWh. */
    private static final double NO_KWH = 1e-9;

    /**
     * Steps that are alike.
     *
     * @param pricePerKwh price of energy, money/kWh
     * @param baseKw load that cannot be moved, kW
     * @param demandSet demand charges that count them, as bits
     * @param steps the steps
     * @param hours their length together, h
     * @param shares share of its power that a session has, where it has less than all of it
     */
    record Span(double pricePerKwh, double baseKw, int demandSet, int[] steps, double hours, Map<Integer, Double> shares) {

        /** Hours in which a session that is there draws at full power what it can draw in the span. */
        double hours(int session) {
            return hours * shares.getOrDefault(session, 1.0);
        }
    }

    private record Alike(int fromStep, int toStep, int cabinet, double hoursAtLimit, double firstShare, List<Double> lastShares) {
        static Alike of(Session session) {
            return new Alike(session.fromStep(), session.toStep(), session.cabinet(), session.meterKwh() / session.limitKw(),
                    session.firstShare(), session.lastShares());
        }
    }

    private record Kind(double pricePerKwh, double baseKw, int demandSet, Present present) {
    }

    /** Sessions of a step, and the share of its power that one has where it has less than all. */
    private record Present(BitSet sessions, Map<Integer, Double> shares) {
        Present() {
            this(new BitSet(), new TreeMap<>());
        }

        void add(int session, double share) {
            sessions.set(session);
            if (share < 1) {
                shares.put(session, share);
            }
        }
    }

    static ReducedStretch of(StretchProblem stretch) {
        Map<Alike, List<Integer>> alike = new LinkedHashMap<>();
        IntStream.range(0, stretch.sessions().size()).filter(s -> stretch.sessions().get(s).meterKwh() > NO_KWH).boxed()
                .sorted(Comparator.comparingInt(s -> stretch.sessions().get(s).toStep()))
                .forEach(s -> alike.computeIfAbsent(Alike.of(stretch.sessions().get(s)), k -> new ArrayList<>()).add(s));
        List<List<Integer>> members = List.copyOf(alike.values());
        List<Session> sessions = members.stream().map(m -> together(stretch, m)).toList();
        List<Span> spans = spans(stretch, sessions);
        return new ReducedStretch(sessions, members, spans, spansOfSessions(stretch, sessions, spans), priceStarts(spans));
    }

    private static Session together(StretchProblem stretch, List<Integer> members) {
        Session one = stretch.sessions().get(members.get(0));
        double meterKwh = members.stream().mapToDouble(m -> stretch.sessions().get(m).meterKwh()).sum();
        double limitKw = members.stream().mapToDouble(m -> stretch.sessions().get(m).limitKw()).sum();
        return new Session(one.fromStep(), one.toStep(), meterKwh, limitKw, one.cabinet(), one.firstShare(), one.lastShares());
    }

    private static List<Span> spans(StretchProblem stretch, List<Session> sessions) {
        Map<Kind, List<Integer>> stepsOfKind = new LinkedHashMap<>();
        Present[] present = present(stretch, sessions);
        for (int step = 0; step < stretch.steps(); step++) {
            if (!present[step].sessions.isEmpty()) {
                Kind kind = new Kind(stretch.pricePerKwh()[step], stretch.baseKw()[step], stretch.demandSets()[step],
                        present[step]);
                stepsOfKind.computeIfAbsent(kind, k -> new ArrayList<>()).add(step);
            }
        }
        List<Span> spans = new ArrayList<>();
        stepsOfKind.forEach((kind, steps) -> spans.add(new Span(kind.pricePerKwh(), kind.baseKw(), kind.demandSet(),
                steps.stream().mapToInt(Integer::intValue).toArray(), steps.size() * stretch.stepHours(), kind.present().shares())));
        spans.sort(Comparator.comparingDouble(Span::pricePerKwh));
        return List.copyOf(spans);
    }

    /** Who is there in each step. That changes only where a session begins, ends or can draw part of its power, so steps between share it. */
    private static Present[] present(StretchProblem stretch, List<Session> sessions) {
        Present[] present = new Present[stretch.steps()];
        BitSet changes = changes(sessions, present.length);
        for (int step = 0; step < present.length; step++) {
            present[step] = step == 0 || changes.get(step) ? presentAt(step, sessions, present.length) : present[step - 1];
        }
        return present;
    }

    private static BitSet changes(List<Session> sessions, int steps) {
        BitSet changes = new BitSet(steps);
        for (Session session : sessions) {
            changes.set(session.fromStep() % steps);
            changes.set((session.fromStep() + 1) % steps);
            for (int step = Math.max(session.fromStep(), session.toStep() - session.lastShares().size()); step <= session.toStep(); step++) {
                changes.set(step % steps);
            }
        }
        return changes;
    }

    private static Present presentAt(int step, List<Session> sessions, int steps) {
        Present present = new Present();
        for (int s = 0; s < sessions.size(); s++) {
            Session session = sessions.get(s);
            int running = step < session.fromStep() ? step + steps : step;
            if (running < session.toStep()) {
                present.add(s, session.share(running));
            }
        }
        return present;
    }

    private static List<List<Integer>> spansOfSessions(StretchProblem stretch, List<Session> sessions, List<Span> spans) {
        int[] spanOfStep = new int[stretch.steps()];
        for (int span = 0; span < spans.size(); span++) {
            for (int step : spans.get(span).steps()) {
                spanOfStep[step] = span;
            }
        }
        return sessions.stream().map(session -> spansOfSession(session, spanOfStep, spans.size())).toList();
    }

    private static List<Integer> spansOfSession(Session session, int[] spanOfStep, int spans) {
        List<Integer> met = new ArrayList<>();
        boolean[] seen = new boolean[spans];
        for (int step = session.fromStep(); step < session.toStep(); step++) {
            int span = spanOfStep[step % spanOfStep.length];
            if (!seen[span]) {
                seen[span] = true;
                met.add(span);
            }
        }
        return List.copyOf(met);
    }

    private static int[] priceStarts(List<Span> spans) {
        return IntStream.rangeClosed(0, spans.size()).filter(span -> span == 0 || span == spans.size()
                || spans.get(span).pricePerKwh() > spans.get(span - 1).pricePerKwh()).toArray();
    }

    /** Energy of all sessions, kWh. */
    double kwh() {
        return sessions.stream().mapToDouble(Session::meterKwh).sum();
    }

    /** Number of different prices. */
    int prices() {
        return priceStarts.length - 1;
    }

    /** A price, counted from the lowest, money/kWh. */
    double pricePerKwh(int price) {
        return spans.get(priceStarts[price]).pricePerKwh();
    }
}
