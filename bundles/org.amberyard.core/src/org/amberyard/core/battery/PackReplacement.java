package org.amberyard.core.battery;

import java.util.Optional;

/** The rule that says when a pack is replaced: at the cycle limit or at the end-of-life capacity, whichever comes first. */
public final class PackReplacement {

    /** Why a pack is replaced. */
    public enum Cause {
        /** The full cycles have reached the limit. */
        CYCLE_LIMIT,
        /** The capacity has fallen to the end-of-life share. */
        CAPACITY
    }

    private PackReplacement() {
    }

    /** Cause to replace a pack of an age and full cycles; empty while it is good. */
    public static Optional<Cause> due(BatterySpec battery, double years, double fullCycles) {
        if (fullCycles >= battery.cycleLimit()) {
            return Optional.of(Cause.CYCLE_LIMIT);
        }
        boolean worn = battery.fade().health(years, fullCycles) <= battery.endOfLifeShare();
        return worn ? Optional.of(Cause.CAPACITY) : Optional.empty();
    }

    /** Share of a pack's life that is left, by the nearer of its two limits; 1 when new, 0 when due. */
    public static double lifeLeft(BatterySpec battery, double years, double fullCycles) {
        double byCycles = 1 - fullCycles / battery.cycleLimit();
        double lossAllowed = 1 - battery.endOfLifeShare();
        double lost = 1 - battery.fade().health(years, fullCycles);
        double byCapacity = lossAllowed > 0 ? 1 - lost / lossAllowed : 0;
        return Math.max(0, Math.min(byCycles, byCapacity));
    }
}
