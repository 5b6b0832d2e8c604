package org.amberyard.core.duty;

import java.util.Comparator;
import java.util.List;
import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.depot.ChargeWindow;

/**
 * Walks a bus through a school week of equal days and finds how far its battery stays above the reserve.
 *
 * <p>The bus leaves with a full pack after the weekend. Between runs it is charged when it stands at the yard, if midday
 * charging is asked for; at night it stands at a port of the yard and is charged for those hours of the charge window between
 * its last run and its first, which may not fill it. Energy that a cold pack does not give and the reserve count as not there. The unit is the day's block, not the run.
 *
 * @param batteryKw power into the battery while plugged in, kW
 * @param window hours of the night in which buses are charged
 * @param midday true when the bus is plugged in between runs at the yard
 * @param reserveShare share of the usable energy that planning keeps
 * @param middayHours most time of a day that is spent charging between runs, from the first stand on, h; infinite where every
 *            stand is used whole
 */
public record BlockCheck(double batteryKw, ChargeWindow window, boolean midday, double reserveShare, double middayHours) {
    private static final int DAYS_IN_A_ROW = 5;

    /** A check that uses every stand at the yard whole. */
    public BlockCheck(double batteryKw, ChargeWindow window, boolean midday, double reserveShare) {
        this(batteryKw, window, midday, reserveShare, Double.POSITIVE_INFINITY);
    }

    /** The same with no more charging between runs than so many hours a day. */
    public BlockCheck withMiddayHours(double hours) {
        return new BlockCheck(batteryKw, window, midday, reserveShare, hours);
    }

    /**
     * Outcome of a week.
     *
     * @param usableKwh energy that can be drawn from the full pack when it is as cold as on these days, kWh
     * @param needKwh net energy of one day's runs, kWh
     * @param marginKwh energy left above the reserve at the week's tightest moment, kWh; negative when the duty fails. A bus
     *            that went below its reserve starts the next night at the reserve, so the figure falls evenly as days get harder
     *            and packs get older
     * @param marginShare that margin over the usable energy of a warm pack
     * @param marginKm that margin as distance at the day's consumption, km
     * @param worstRun run at whose end the margin is least
     * @param days day of the week on which the duty first fails; the whole week when it holds
     * @param refilled true when every night fills the pack
     */
    public record Outcome(double usableKwh, double needKwh, double marginKwh, double marginShare, double marginKm,
            String worstRun, int days, boolean refilled) {

        /** Worst first: what fails before what holds, what fails sooner first, then by margin. */
        public static final Comparator<Outcome> WORST_FIRST = Comparator.comparing(Outcome::passes)
                .thenComparing(Outcome::days).thenComparing(Outcome::marginKwh);

        /** True when the bus stays above the reserve all week. */
        public boolean passes() {
            return marginKwh >= 0;
        }
    }

    /**
     * State of charge at a moment.
     *
     * @param minute minutes after midnight; beyond 1,440 on the next day
     * @param chargeShare energy in the pack over its usable energy
     * @param floorShare what must be left: the reserve and what a cold pack does not give
     */
    public record Moment(double minute, double chargeShare, double floorShare) {
    }

    /** A week of a day that is not empty, with a battery of a health. */
    public Outcome of(DayBlock day, BatterySpec battery, double health) {
        BlockWalk walk = new BlockWalk(this, day, battery, health);
        boolean refilled = true;
        int failingDay = 0;
        // After a night that fills the pack the next day is like the first.
        for (int days = 1; days == 1 || !refilled && days <= DAYS_IN_A_ROW; days++) {
            walk.day();
            failingDay = failingDay == 0 && walk.marginShare() < 0 ? days : failingDay;
            walk.night(day.nextMorningMin());
            refilled = days == 1 && walk.chargeShare() >= 1;
        }
        double usable = walk.usableKwh();
        double need = day.batteryKwh();
        double margin = walk.marginShare() * usable;
        return new Outcome(usable * (1 - battery.lockedShare(day.coldestPackC())), need, margin, walk.marginShare(),
                need > 0 ? margin * day.km() / need : 0, walk.worstRun(), failingDay > 0 ? failingDay : DAYS_IN_A_ROW,
                refilled);
    }

    /** State of charge through one day that starts with a full pack, and the night after it. */
    public List<Moment> moments(DayBlock day, BatterySpec battery, double health) {
        return moments(day, battery, health, day.nextMorningMin());
    }

    /** The same when the next departure is at another time, in minutes after the day's midnight. */
    public List<Moment> moments(DayBlock day, BatterySpec battery, double health, double nextDepartureMin) {
        BlockWalk walk = new BlockWalk(this, day, battery, health);
        walk.day();
        walk.night(nextDepartureMin);
        return walk.moments();
    }

    /** What is charged between runs on a day that starts with a full pack; nothing unless midday charging is asked for. */
    public List<LayoverCharge> layovers(DayBlock day, BatterySpec battery, double health) {
        BlockWalk walk = new BlockWalk(this, day, battery, health);
        walk.day();
        return walk.sessions();
    }
}
