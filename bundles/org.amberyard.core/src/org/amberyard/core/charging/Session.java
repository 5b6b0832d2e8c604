package org.amberyard.core.charging;

import org.amberyard.core.math.Checks;

/**
 * A bus at a plug, as a charge schedule sees it. Steps count from the start of its stretch of days; a session that runs over
 * the end of the stretch goes on at its start, so {@code toStep} may exceed the number of steps. It is no longer than the
 * stretch.
 *
 * @param fromStep first step
 * @param toStep step after the last
 * @param meterKwh energy to be drawn at the meter, kWh
 * @param limitKw largest power at the meter, kW
 * @param cabinet place of the cabinet whose power the plug shares, or {@link #OWN_POWER}
 */
public record Session(int fromStep, int toStep, double meterKwh, double limitKw, int cabinet) {

    /** No cabinet is shared. */
    public static final int OWN_POWER = -1;

    public Session {
        Checks.notNegative("energy of a session, kWh,", meterKwh);
        Checks.notNegative("largest power of a session, kW,", limitKw);
    }
}
