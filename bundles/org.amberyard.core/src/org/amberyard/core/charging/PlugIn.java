package org.amberyard.core.charging;

/**
 * A bus that stands at the yard and is to be charged. Minutes count from the start of the stretch; a stay that runs over its
 * end goes on at its start.
 *
 * @param bus number of the bus; settles ties
 * @param label what the bus is called
 * @param fromMin arrival, minutes; from 0 to the length of the stretch
 * @param toMin departure, minutes; at most the length of the stretch later
 * @param chargeByMin moment by which it is to be charged, because the port heats it from then on; the departure where
 *            it does not
 * @param batteryKwh energy to be stored, kWh
 * @param leastKwh energy without which it could not go on to its next charge, kWh; the rest may wait for the bus's
 *            last stay. It is
 *            more than the energy to be stored where more was stored before than had to be
 * @param endShare state of charge when it is stored, at most 1
 * @param acceptance what the bus takes
 */
public record PlugIn(int bus, String label, double fromMin, double toMin, double chargeByMin, double batteryKwh,
        double leastKwh, double endShare, BusAcceptance acceptance) {

    public PlugIn {
        if (!(fromMin >= 0 && toMin >= chargeByMin && chargeByMin > fromMin && batteryKwh >= 0 && endShare <= 1)) {
            throw new IllegalArgumentException("Bus " + label + " stands from minute " + fromMin + " to " + toMin
                    + ", charged by " + chargeByMin + ", for " + batteryKwh + " kWh up to a state of charge of "
                    + endShare
                    + ", but must arrive at minute 0 or later, be charged after that and leave no sooner, need 0 kWh or "
                    + "more and end at 1 or less");
        }
    }

    /** A bus that can be charged until it leaves and needs all of it. */
    public PlugIn(int bus, String label, double fromMin, double toMin, double batteryKwh, double endShare,
            BusAcceptance acceptance) {
        this(bus, label, fromMin, toMin, toMin, batteryKwh, batteryKwh, endShare, acceptance);
    }

    /** State of charge on arrival. */
    public double startShare() {
        return endShare - batteryKwh / acceptance.curve().usableKwh();
    }

    /** Mean power into the battery that has it ready just in time, kW. */
    public double evenKw() {
        return batteryKwh / ((chargeByMin - fromMin) / 60);
    }

    /** The same that arrives as before and leaves with less stored, kWh. */
    public PlugIn storingLess(double lessKwh) {
        double storedKwh = Math.max(0, batteryKwh - lessKwh);
        return new PlugIn(bus, label, fromMin, toMin, chargeByMin, storedKwh, leastKwh,
                endShare - (batteryKwh - storedKwh) / acceptance.curve().usableKwh(), acceptance);
    }

    /** The same with another energy to be stored; it arrives emptier or fuller, and leaves as before. */
    public PlugIn withKwh(double otherKwh) {
        return new PlugIn(bus, label, fromMin, toMin, chargeByMin, otherKwh,
                Math.max(0, leastKwh + otherKwh - batteryKwh), endShare, acceptance);
    }
}
