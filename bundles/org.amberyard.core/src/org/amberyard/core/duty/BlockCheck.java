package org.amberyard.core.duty;

import java.util.Comparator;
import org.amberyard.core.battery.BatterySpec;

/**
 * Walks a bus through a school week of equal days and finds how far its battery stays above the reserve.
 *
 * <p>The bus leaves with a full pack after the weekend. Between runs it is charged when it stands at the yard, if midday
 * charging is asked for; at night it is charged for the hours of the charge window, which may not fill it. The unit is the
 * day's block, not the run.
 *
 * @param batteryKw power into the battery while plugged in, kW
 * @param nightHours hours of charging at night, h
 * @param midday true when the bus is plugged in between runs at the yard
 * @param reserveShare share of the usable energy that planning keeps
 */
public record BlockCheck(double batteryKw, double nightHours, boolean midday, double reserveShare) {
    private static final int DAYS_IN_A_ROW = 5;

    /**
     * Outcome of a week.
     *
     * @param usableKwh energy that can be drawn from the full pack on these days, kWh
     * @param needKwh net energy of one day's runs, kWh
     * @param marginKwh energy left above the reserve at the week's lowest point, kWh; negative when the duty fails, and then
     *            that of the first day on which it does
     * @param marginKm that margin as distance at the day's consumption, km
     * @param worstRun run at whose end the charge is lowest
     * @param days days driven before the duty fails, the failing one included; the whole week when it holds
     * @param refilled true when every night fills the pack
     */
    public record Outcome(double usableKwh, double needKwh, double marginKwh, double marginKm, String worstRun,
            int days, boolean refilled) {

        /** Worst first: what fails before what holds, what fails sooner first, then by margin. */
        public static final Comparator<Outcome> WORST_FIRST = Comparator.comparing(Outcome::passes)
                .thenComparing(Outcome::days).thenComparing(Outcome::marginKwh);

        /** True when the bus stays above the reserve all week. */
        public boolean passes() {
            return marginKwh >= 0;
        }
    }

    /** A week of a day that is not empty, with a battery of a health. */
    public Outcome of(DayBlock day, BatterySpec battery, double health) {
        double usable = battery.usableKwh(health, day.coldestC());
        BlockWalk walk = new BlockWalk(this, day, usable);
        double reserve = reserveShare * usable;
        boolean refilled = true;
        int days = 0;
        while (days < DAYS_IN_A_ROW && walk.lowestKwh() >= reserve) {
            walk.day();
            days++;
            walk.night();
            refilled &= walk.leftKwh() >= usable;
            if (refilled && walk.lowestKwh() >= reserve) {
                // The next day starts full again, so the rest of the week is like this day.
                days = DAYS_IN_A_ROW;
            }
        }
        double margin = walk.lowestKwh() - reserve;
        double need = day.batteryKwh();
        return new Outcome(usable, need, margin, need > 0 ? margin * day.km() / need : 0, walk.worstRun(),
                days, refilled);
    }

    /** What is charged on a day that starts with a full, new pack: between runs, and in the night after it. */
    public DayCharging charging(DayBlock day, BatterySpec battery) {
        BlockWalk walk = new BlockWalk(this, day, battery.usableKwh(1, day.coldestC()));
        walk.day();
        return new DayCharging(walk.sessions(), walk.missingKwh());
    }
}
