package org.amberyard.core.charging;

import java.util.List;
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
 * @param firstShare share of the largest power that can be drawn as the mean of the first step, 0 to 1
 * @param lastShares the same for as many last steps, in their order; in all others the share is 1
 */
public record Session(int fromStep, int toStep, double meterKwh, double limitKw, int cabinet, double firstShare,
        List<Double> lastShares) {

    /** No cabinet is shared. */
    public static final int OWN_POWER = -1;

    public Session {
        Checks.notNegative("energy of a session, kWh,", meterKwh);
        Checks.notNegative("largest power of a session, kW,", limitKw);
        lastShares = List.copyOf(lastShares);
        requireShare(firstShare);
        lastShares.forEach(Session::requireShare);
    }

    /** A session with its largest power in every step. */
    public Session(int fromStep, int toStep, double meterKwh, double limitKw, int cabinet) {
        this(fromStep, toStep, meterKwh, limitKw, cabinet, 1, List.of());
    }

    private static void requireShare(double share) {
        if (!(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException("a session has " + share + " of its power in a step but must have 0 to 1");
        }
    }

    /** Share of the largest power that can be drawn as the mean of a step from the first to the last. */
    double share(int step) {
        double share = step == fromStep ? firstShare : 1;
        int last = lastShares.size() - (toStep - step);
        return last >= 0 ? Math.min(share, lastShares.get(last)) : share;
    }

    /** The same with another energy, kWh. */
    Session withKwh(double otherKwh) {
        return new Session(fromStep, toStep, otherKwh, limitKw, cabinet, firstShare, lastShares);
    }
}
