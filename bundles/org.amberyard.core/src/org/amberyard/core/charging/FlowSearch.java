package org.amberyard.core.charging;

import java.util.Arrays;

/**
 * Finds ways by which more energy reaches the spans of a {@link ChargeFlow}: a session draws in a span that is full for it, and
 * another that drew there moves to a span that has room, over any number of sessions. Ways are searched breadth first from one
 * session after the other. What a search without success has reached leads nowhere for the others either, and all of it
 * together is the source's side of the smallest cut.
 */
final class FlowSearch {
    private final ChargeFlow flow;
    private final int[] queue;
    private int queued;
    private final int[] givingSession;
    private final int[] leftSpan;
    private final int[] nextSession;
    private final boolean[] withinCabinet;
    private final long[] seen;
    private final long[] reached;
    private final int sessionBits;
    private final int cabinetBits;

    FlowSearch(ChargeFlow flow) {
        this.flow = flow;
        queue = new int[flow.sessions + flow.spans];
        givingSession = new int[flow.spans];
        leftSpan = new int[flow.sessions];
        nextSession = new int[flow.sessions];
        withinCabinet = new boolean[flow.sessions];
        sessionBits = flow.spanWords;
        cabinetBits = sessionBits + flow.sessionWords;
        seen = new long[cabinetBits + flow.cabinets * flow.spanWords];
        reached = new long[seen.length];
    }

    boolean reachedSession(int session) {
        return BitRows.has(reached, sessionBits, session);
    }

    boolean reachedSpan(int span) {
        return BitRows.has(reached, 0, span);
    }

    /** Hours of a reached session's spans that are reached neither themselves nor, where it shares power, at its cabinet. */
    double cutHours(int session, long[] present, double[] sessionHours) {
        double sum = 0;
        int cabinet = flow.cabinet[session];
        for (int word = 0; word < flow.spanWords; word++) {
            long ends = reached[word] | (cabinet < 0 ? 0 : reached[cabinetBits + cabinet * flow.spanWords + word]);
            sum += BitRows.sum(present[session * flow.spanWords + word] & ~ends, word, sessionHours, session * flow.spans);
        }
        return sum;
    }

    /** Hours of spans in which a cabinet is reached but the span is not. */
    double cutHoursOfCabinet(int cabinet, double[] hours) {
        double sum = 0;
        for (int word = 0; word < flow.spanWords; word++) {
            sum += BitRows.sum(reached[cabinetBits + cabinet * flow.spanWords + word] & ~reached[word], word, hours, 0);
        }
        return sum;
    }

    void grow() {
        Arrays.fill(reached, 0);
        for (int session = 0; session < flow.sessions; session++) {
            while (flow.leftKwh(session) > flow.tolerance && !reachedSession(session)) {
                int span = spanWithRoom(session);
                if (span >= 0) {
                    move(session, span);
                }
            }
        }
    }

    private int spanWithRoom(int start) {
        System.arraycopy(reached, 0, seen, 0, seen.length);
        queued = 0;
        BitRows.set(seen, sessionBits, start, true);
        queue[queued++] = start;
        for (int place = 0; place < queued; place++) {
            int node = queue[place];
            if (node >= flow.sessions) {
                leaveSpan(node - flow.sessions);
            } else {
                int span = enterSpans(node);
                if (span >= 0) {
                    return span;
                }
            }
        }
        System.arraycopy(seen, 0, reached, 0, seen.length);
        return -1;
    }

    /** Goes on to the spans that a session could draw in; gives the first that has room or -1. */
    private int enterSpans(int session) {
        int cabinet = flow.cabinet[session];
        for (int word = 0; word < flow.spanWords; word++) {
            long spans = flow.open[session * flow.spanWords + word];
            if (cabinet >= 0) {
                int place = cabinetBits + cabinet * flow.spanWords + word;
                spans &= ~seen[place];
                seen[place] |= spans;
                leaveCabinet(session, cabinet, word, spans);
                spans &= flow.cabinetOpen[cabinet * flow.spanWords + word];
            }
            spans &= ~seen[word];
            seen[word] |= spans;
            for (; spans != 0; spans &= spans - 1) {
                int span = (word << BitRows.WORD) + Long.numberOfTrailingZeros(spans);
                givingSession[span] = session;
                if (flow.roomKwh(span) > flow.tolerance) {
                    return span;
                }
                queue[queued++] = flow.sessions + span;
            }
        }
        return -1;
    }

    /** Goes on to the sessions of a cabinet that could give way to another of it in one of the spans. */
    private void leaveCabinet(int session, int cabinet, int word, long spans) {
        if (spans == 0) {
            return;
        }
        for (int other : flow.membersOfCabinet[cabinet]) {
            long shared = flow.drawn[other * flow.spanWords + word] & spans;
            if (shared != 0 && !BitRows.has(seen, sessionBits, other)) {
                leave(other, (word << BitRows.WORD) + Long.numberOfTrailingZeros(shared), session, true);
            }
        }
    }

    /** Goes on to the sessions that could give way in a span. */
    private void leaveSpan(int span) {
        for (int word = 0; word < flow.sessionWords; word++) {
            long others = flow.drawing[span * flow.sessionWords + word] & ~seen[sessionBits + word];
            for (; others != 0; others &= others - 1) {
                int other = (word << BitRows.WORD) + Long.numberOfTrailingZeros(others);
                leave(other, span, givingSession[span], false);
                if (flow.cabinet[other] >= 0) {
                    BitRows.set(seen, cabinetBits + flow.cabinet[other] * flow.spanWords, span, true);
                }
            }
        }
    }

    private void leave(int other, int span, int session, boolean cabinetOnly) {
        BitRows.set(seen, sessionBits, other, true);
        leftSpan[other] = span;
        nextSession[other] = session;
        withinCabinet[other] = cabinetOnly;
        queue[queued++] = other;
    }

    private void move(int start, int last) {
        double amount = Math.min(flow.leftKwh(start), flow.roomKwh(last));
        int span = last;
        boolean cabinetAside = false;
        for (int session = givingSession[last];; session = nextSession[session]) {
            amount = Math.min(amount, flow.powerRoomKwh(session, span));
            amount = cabinetAside ? amount : Math.min(amount, flow.cabinetRoomKwh(session, span));
            if (session == start) {
                break;
            }
            span = leftSpan[session];
            cabinetAside = withinCabinet[session];
            amount = Math.min(amount, flow.kwh(session, span));
        }
        span = last;
        for (int session = givingSession[last]; session != start; session = nextSession[session]) {
            flow.move(session, span, amount);
            span = leftSpan[session];
            flow.move(session, span, -amount);
        }
        flow.move(start, span, amount);
        flow.finish(start, last, amount);
    }
}
