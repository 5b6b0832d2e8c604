package org.amberyard.core.charging;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Energy of a stretch of days as a flow from its sessions to its spans, kWh. A session gives at most what it needs, takes part in
 * a span with at most its largest power, in a cabinet with others at most the cabinet's, and a span takes at most its limit. Sets
 * of spans and sessions are kept as bits, so that a search steps over 64 of them at once; all memory is taken at the start.
 */
final class ChargeFlow {
    private static final double RELATIVE_TOLERANCE = 1e-13;

    final int sessions;
    final int spans;
    final int spanWords;
    final int sessionWords;
    final int cabinets;
    final int[] cabinet;
    final int[][] membersOfCabinet;
    final double tolerance;
    private final double[] needKwh;
    private final double[] limitKw;
    private final double[] hours;
    /** By session and span: hours in which full power draws the most that the session can draw there. */
    private final double[] sessionHours;
    private final double[] cabinetKw;
    private final double[] kwh;
    private final double[] leftKwh;
    private final double[] roomKwh;
    private final double[] spanKwh;
    private final double[] cabinetRoomKwh;
    private final long[] present;
    private final FlowSearch search;

    /** By session: spans in which it could draw more. */
    final long[] open;
    /** By session: spans in which it draws. */
    final long[] drawn;
    /** By span: sessions that draw in it. */
    final long[] drawing;
    /** By cabinet: spans in which it could give more. */
    final long[] cabinetOpen;

    /** A flow of nothing whose spans take nothing yet. */
    ChargeFlow(ReducedStretch stretch, double[] cabinetKw) {
        this.cabinetKw = cabinetKw;
        sessions = stretch.sessions().size();
        spans = stretch.spans().size();
        cabinets = cabinetKw.length;
        spanWords = BitRows.words(spans);
        sessionWords = BitRows.words(sessions);
        needKwh = stretch.sessions().stream().mapToDouble(Session::meterKwh).toArray();
        limitKw = stretch.sessions().stream().mapToDouble(Session::limitKw).toArray();
        cabinet = stretch.sessions().stream().mapToInt(Session::cabinet).toArray();
        membersOfCabinet = IntStream.range(0, cabinets)
                .mapToObj(one -> IntStream.range(0, sessions).filter(session -> cabinet[session] == one).toArray())
                .toArray(int[][]::new);
        hours = stretch.spans().stream().mapToDouble(ReducedStretch.Span::hours).toArray();
        tolerance = RELATIVE_TOLERANCE * Math.max(1, Arrays.stream(needKwh).max().orElse(0));
        kwh = new double[sessions * spans];
        leftKwh = new double[sessions];
        roomKwh = new double[spans];
        spanKwh = new double[spans];
        cabinetRoomKwh = new double[cabinets * spans];
        sessionHours = new double[sessions * spans];
        present = new long[sessions * spanWords];
        open = new long[present.length];
        drawn = new long[present.length];
        drawing = new long[spans * sessionWords];
        cabinetOpen = new long[cabinets * spanWords];
        for (int session = 0; session < sessions; session++) {
            for (int span : stretch.spansOfSession().get(session)) {
                BitRows.set(present, session * spanWords, span, true);
                sessionHours[session * spans + span] = stretch.spans().get(span).hours(session);
            }
        }
        search = new FlowSearch(this);
        reset();
    }

    /** Takes all energy away and closes all spans. */
    void reset() {
        Arrays.fill(kwh, 0);
        Arrays.fill(roomKwh, 0);
        Arrays.fill(spanKwh, 0);
        Arrays.fill(drawn, 0);
        Arrays.fill(drawing, 0);
        Arrays.fill(open, 0);
        Arrays.fill(cabinetOpen, 0);
        for (int session = 0; session < sessions; session++) {
            leftKwh[session] = needKwh[session];
            if (limitKw[session] > 0) {
                System.arraycopy(present, session * spanWords, open, session * spanWords, spanWords);
            }
        }
        for (int one = 0; one < cabinets; one++) {
            for (int span = 0; span < spans; span++) {
                cabinetRoomKwh[one * spans + span] = cabinetKw[one] * hours[span];
                BitRows.set(cabinetOpen, one * spanWords, span, cabinetKw[one] > 0);
            }
        }
    }

    double kwh(int session, int span) {
        return kwh[session * spans + span];
    }

    double sessionKwh(int session) {
        double sum = 0;
        for (int span = 0; span < spans; span++) {
            sum += kwh(session, span);
        }
        return sum;
    }

    /** Copies all energies, session by session. */
    void copyTo(double[] sessionsAndSpans) {
        System.arraycopy(kwh, 0, sessionsAndSpans, 0, kwh.length);
    }

    /** Energy that a session still needs, kWh. */
    double leftKwh(int session) {
        return leftKwh[session];
    }

    double spanKwh(int span) {
        return spanKwh[span];
    }

    /** Energy that a span may still take, kWh. */
    double roomKwh(int span) {
        return roomKwh[span];
    }

    /** Energy that a session may still draw in a span by its own power, kWh. */
    double powerRoomKwh(int session, int span) {
        return limitKw[session] * sessionHours[session * spans + span] - kwh[session * spans + span];
    }

    /** Energy that the cabinet of a session may still give in a span, kWh; infinite where it shares none. */
    double cabinetRoomKwh(int session, int span) {
        return cabinet[session] < 0 ? Double.POSITIVE_INFINITY : cabinetRoomKwh[cabinet[session] * spans + span];
    }

    /** Energy of all sessions together, kWh. */
    double kwh() {
        double sum = 0;
        for (int span = 0; span < spans; span++) {
            sum += spanKwh[span];
        }
        return sum;
    }

    /** Lets a span take so much; what flows above it is taken back, from its last sessions first. */
    void limitSpan(int span, double limitKwh) {
        double excess = spanKwh[span] - limitKwh;
        for (int session = sessions - 1; excess > 0 && session >= 0; session--) {
            double taken = Math.min(excess, kwh[session * spans + span]);
            if (taken > 0) {
                charge(session, span, -taken);
                excess -= taken;
            }
        }
        roomKwh[span] = Math.max(0, limitKwh - spanKwh[span]);
    }

    /** Charges a session in a span by as much of an energy as there is room for. */
    void chargeUpTo(int session, int span, double wishedKwh) {
        double amount = Math.min(Math.min(wishedKwh, leftKwh[session]), Math.min(roomKwh[span],
                Math.min(powerRoomKwh(session, span), cabinetRoomKwh(session, span))));
        if (amount > tolerance) {
            charge(session, span, amount);
        }
    }

    private void charge(int session, int span, double amount) {
        move(session, span, amount);
        finish(session, span, amount);
    }

    /** Counts energy that a search brought from a session to a span, on whatever way. */
    void finish(int session, int span, double amount) {
        leftKwh[session] -= amount;
        roomKwh[span] -= amount;
        spanKwh[span] += amount;
    }

    /** Changes what a session draws in a span, its need and the span's limit left aside. */
    void move(int session, int span, double amount) {
        int place = session * spans + span;
        kwh[place] += amount;
        BitRows.set(open, session * spanWords, span, powerRoomKwh(session, span) > tolerance);
        boolean draws = kwh[place] > tolerance;
        BitRows.set(drawn, session * spanWords, span, draws);
        BitRows.set(drawing, span * sessionWords, session, draws);
        if (cabinet[session] >= 0) {
            int cabinetPlace = cabinet[session] * spans + span;
            cabinetRoomKwh[cabinetPlace] -= amount;
            BitRows.set(cabinetOpen, cabinet[session] * spanWords, span, cabinetRoomKwh[cabinetPlace] > tolerance);
        }
    }

    /** Grows the flow to the maximum: first what can be charged directly, session by session, then by moving others. */
    void grow() {
        for (int session = 0; session < sessions; session++) {
            for (int word = 0; word < spanWords && leftKwh[session] > tolerance; word++) {
                for (long rest = open[session * spanWords + word]; rest != 0; rest &= rest - 1) {
                    chargeUpTo(session, (word << BitRows.WORD) + Long.numberOfTrailingZeros(rest), Double.POSITIVE_INFINITY);
                }
            }
        }
        search.grow();
    }

    /** True when the span lies on the source's side of the smallest cut of the grown flow: only its own limit holds it. */
    boolean heldByLimit(int span) {
        return search.reachedSpan(span);
    }

    /** Capacity of the smallest cut without that of the spans that lie on the source's side, kWh. */
    double cutKwhBesideSpans() {
        double sum = 0;
        for (int session = 0; session < sessions; session++) {
            sum += search.reachedSession(session) ? search.cutHours(session, present, sessionHours) * limitKw[session] : needKwh[session];
        }
        for (int one = 0; one < cabinets; one++) {
            sum += search.cutHoursOfCabinet(one, hours) * cabinetKw[one];
        }
        return sum;
    }
}
