package org.amberyard.core.charging;

/**
 * A bus at a plug for a time.
 *
 * @param place place of the plug-in in its stretch
 * @param plugIn the plug-in
 * @param unit place of the port in the yard's list
 * @param plug plug of the port
 * @param fromMin from, minutes counted as in the plug-in; not before its arrival
 * @param toMin to, minutes; not after its departure
 * @param swap true when a person had to plug the bus in after it arrived
 */
public record Plugged(int place, PlugIn plugIn, int unit, int plug, double fromMin, double toMin, boolean swap) {

    /** Moment until which it can be charged there, minutes counted as in the plug-in. */
    double chargeToMin() {
        return Math.min(toMin, plugIn.chargeByMin());
    }
}
