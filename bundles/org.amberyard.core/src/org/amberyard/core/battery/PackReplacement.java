package org.amberyard.core.battery;

import java.util.Optional;

/**
 * The rule that says when a pack is replaced: at the cycle limit, at the end-of-life capacity, when the duty can no longer be
 * done with it though it could with a new one, or at its age limit, whichever comes first. Where several come in the same year
 * the first of this order is named.
 */
public final class PackReplacement {

    /** Why a pack is replaced. */
    public enum Cause {
        /** The full cycles have reached the limit. */
        CYCLE_LIMIT("cycle limit reached"),
        /** The capacity has fallen to the end-of-life share. */
        CAPACITY("end-of-life capacity reached"),
        /** The route cannot be done on its worst day any more. */
        DUTY("route too long for the worn pack"),
        /** The pack has reached its age limit. */
        AGE("age limit reached");

        private final String label;

        Cause(String label) {
            this.label = label;
        }

        /** Words for tables and charts. */
        public String label() {
            return label;
        }
    }

    private PackReplacement() {
    }

    /**
     * Cause to replace a pack; empty while it is good.
     *
     * @param leastHealth health below which the duty fails; zero when it holds to the end of life or fails with a new pack too
     */
    public static Optional<Cause> due(BatterySpec battery, PackWear wear, double leastHealth) {
        PackLife life = battery.life();
        if (wear.fullCycles() >= life.cycleLimit()) {
            return Optional.of(Cause.CYCLE_LIMIT);
        }
        if (wear.health() <= life.endOfLifeShare()) {
            return Optional.of(Cause.CAPACITY);
        }
        if (wear.health() < leastHealth) {
            return Optional.of(Cause.DUTY);
        }
        return wear.years() >= life.ageLimitYears() ? Optional.of(Cause.AGE) : Optional.empty();
    }

    /** Share of a pack's life that is left, by the nearest of its own limits; 1 when new, 0 when due. */
    public static double lifeLeft(BatterySpec battery, PackWear wear) {
        PackLife life = battery.life();
        double byCycles = 1 - wear.fullCycles() / life.cycleLimit();
        double lossAllowed = 1 - life.endOfLifeShare();
        double byCapacity = lossAllowed > 0 ? 1 - (1 - wear.health()) / lossAllowed : 0;
        double byAge = 1 - wear.years() / life.ageLimitYears();
        return Math.max(0, Math.min(byAge, Math.min(byCycles, byCapacity)));
    }
}
