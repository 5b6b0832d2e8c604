package org.amberyard.core.duty;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.battery.ConstantPowerTaper;

/** State of charge of one bus while a {@link BlockCheck} walks it through its days. */
final class BlockWalk {
    /** Keeps the arithmetic finite for a pack that is worn out. */
    private static final double LEAST_HEALTH = 0.01;

    private final BlockCheck check;
    private final DayBlock day;
    private final BatterySpec battery;
    private final double usableKwh;
    private final ConstantPowerTaper taper;
    private final List<LayoverCharge> sessions = new ArrayList<>();
    private final List<BlockCheck.Moment> moments = new ArrayList<>();
    private double chargeShare = 1;
    private double marginShare;
    private double middayHoursLeft;
    private String worstRun = "";

    BlockWalk(BlockCheck check, DayBlock day, BatterySpec battery, double health) {
        this.check = check;
        this.day = day;
        this.battery = battery;
        double alive = Math.max(LEAST_HEALTH, health);
        this.usableKwh = battery.usableKwh(alive);
        this.taper = new ConstantPowerTaper(battery, alive);
    }

    /** Drives the day's runs and charges between them. */
    void day() {
        middayHoursLeft = check.middayHours();
        for (int place = 0; place < day.legs().size(); place++) {
            DayBlock.Leg leg = day.legs().get(place);
            note(leg.departureMin(), leg);
            chargeShare -= leg.use().batteryKwh() / usableKwh;
            note(leg.arrivalMin(), leg);
            double margin = chargeShare - floorShare(leg);
            if (margin < marginShare || worstRun.isEmpty()) {
                marginShare = margin;
                worstRun = leg.name();
            }
            if (check.midday() && leg.yardAfter() && place + 1 < day.legs().size()) {
                charge(leg, day.legs().get(place + 1).departureMin());
            }
        }
    }

    /** Share of the usable energy that must not be drawn at the end of a run. */
    private double floorShare(DayBlock.Leg leg) {
        return check.reserveShare() + battery.lockedShare(leg.packC());
    }

    private void note(double minute, DayBlock.Leg leg) {
        moments.add(new BlockCheck.Moment(minute, chargeShare, floorShare(leg)));
    }

    private void charge(DayBlock.Leg after, double toMin) {
        double hours = Math.min(middayHoursLeft, Math.max(0, toMin - after.arrivalMin()) / 60);
        middayHoursLeft -= hours;
        double before = chargeShare;
        chargeShare = taper.endShare(chargeShare, check.batteryKw(), after.packC(), hours);
        if (chargeShare > before) {
            sessions.add(new LayoverCharge(after.arrivalMin(), toMin, (chargeShare - before) * usableKwh));
        }
    }

    /** Charges in those hours of the charge window in which the bus stands until its next departure. */
    void night(double nextMin) {
        DayBlock.Leg last = day.legs().get(day.legs().size() - 1);
        double hours = check.window().hoursWithin(last.arrivalMin(), nextMin);
        chargeShare = taper.endShare(Math.max(floorShare(last), chargeShare), check.batteryKw(), day.nightPackC(), hours);
        note(nextMin, last);
    }

    double usableKwh() {
        return usableKwh;
    }

    double chargeShare() {
        return chargeShare;
    }

    double marginShare() {
        return marginShare;
    }

    String worstRun() {
        return worstRun;
    }

    List<LayoverCharge> sessions() {
        return sessions;
    }

    List<BlockCheck.Moment> moments() {
        return moments;
    }
}
