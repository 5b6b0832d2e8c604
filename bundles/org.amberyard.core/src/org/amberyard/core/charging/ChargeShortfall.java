package org.amberyard.core.charging;

import java.util.Locale;

/**
 * A bus that leaves without the charge that it needs.
 *
 * @param plugIn its stay
 * @param shortKwh energy missing in the battery, kWh
 * @param moreMin time that it would still need at its port, minutes; infinite when it has no port or the pack takes nothing
 */
public record ChargeShortfall(PlugIn plugIn, double shortKwh, double moreMin) {
    private static final int DAY_MIN = 1440;

    /** The shortfall in words, for lists. */
    public String words() {
        int minute = (int) Math.floor(plugIn.toMin()) % DAY_MIN;
        String missed = String.format(Locale.ROOT, "%s misses %02d:%02d by %.1f kWh; ", plugIn.label(), minute / 60,
                minute % 60, shortKwh);
        return missed + (Double.isInfinite(moreMin) ? "no port charges it"
                : String.format(Locale.ROOT, "%.0f min more at its port would do", Math.ceil(moreMin)));
    }
}
