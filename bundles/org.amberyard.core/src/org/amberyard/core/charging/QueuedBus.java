package org.amberyard.core.charging;

/** A bus in the queue for a plug. Minutes run on from the quietest moment of the stretch and do not wrap. */
final class QueuedBus {
    final int place;
    final PlugIn plugIn;
    private final double laterMin;
    final double arrivalMin;
    final double departureMin;
    /** Moment by which it is to be charged. */
    final double chargeByMin;
    int unit;
    int plug;
    double startMin;
    /** Moment at which it is full, or can be charged no longer. */
    double readyMin;
    double shortKwh;
    boolean swap;

    QueuedBus(int place, PlugIn plugIn, double laterMin) {
        this.place = place;
        this.plugIn = plugIn;
        this.laterMin = laterMin;
        this.arrivalMin = plugIn.fromMin() + laterMin;
        this.departureMin = plugIn.toMin() + laterMin;
        this.chargeByMin = plugIn.chargeByMin() + laterMin;
    }

    /** Time that it needs at its plug, minutes. */
    double chargingMin() {
        return readyMin - startMin;
    }

    /** The bus at its plug until a moment. */
    Plugged until(double toMin) {
        return new Plugged(place, plugIn, unit, plug, startMin - laterMin, toMin - laterMin, swap);
    }
}
