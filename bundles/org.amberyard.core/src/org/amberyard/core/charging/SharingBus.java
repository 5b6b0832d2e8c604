package org.amberyard.core.charging;

/** A bus that shares power with others, in one turn of the stretch. */
final class SharingBus {
    final PlugCharge charge;
    final double laterMin;
    final ChargeTimes times;
    /** What it asks for, then what it gets, at the meter, kW. */
    double meterKw;
    /** When it will be full at that power, minutes. */
    double fullMin;
    /** True once its part is settled; also for a bus that does not draw. */
    boolean granted;

    SharingBus(PlugCharge charge, double laterMin, ChargeTimes times) {
        this.charge = charge;
        this.laterMin = laterMin;
        this.times = times;
    }

    boolean draws(double nowMin) {
        return times.endMin(nowMin) > nowMin && !charge.full();
    }

    /** When it leaves, minutes of the turns in a row. */
    double leavesMin() {
        return charge.plugged.chargeToMin() + laterMin;
    }
}
