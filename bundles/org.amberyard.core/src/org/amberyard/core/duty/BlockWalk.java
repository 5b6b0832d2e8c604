package org.amberyard.core.duty;

import java.util.ArrayList;
import java.util.List;

/** State of charge of one bus while a {@link BlockCheck} walks it through its days. */
final class BlockWalk {
    private final BlockCheck check;
    private final DayBlock day;
    private final double usableKwh;
    private final List<DayCharging.Session> sessions = new ArrayList<>();
    private double leftKwh;
    private double lowestKwh;
    private String worstRun = "";

    BlockWalk(BlockCheck check, DayBlock day, double usableKwh) {
        this.check = check;
        this.day = day;
        this.usableKwh = usableKwh;
        this.leftKwh = usableKwh;
        this.lowestKwh = usableKwh;
    }

    /** Drives the day's runs and charges between them. */
    void day() {
        for (int i = 0; i < day.legs().size(); i++) {
            DayBlock.Leg leg = day.legs().get(i);
            leftKwh -= leg.use().batteryKwh();
            if (leftKwh < lowestKwh || worstRun.isEmpty()) {
                lowestKwh = leftKwh;
                worstRun = leg.name();
            }
            if (check.midday() && leg.yardAfter() && i + 1 < day.legs().size()) {
                charge(leg.arrivalMin(), day.legs().get(i + 1).departureMin());
            }
        }
    }

    private void charge(double fromMin, double toMin) {
        double possible = check.batteryKw() * Math.max(0, toMin - fromMin) / 60;
        double charged = Math.min(usableKwh - leftKwh, possible);
        if (charged > 0) {
            leftKwh += charged;
            sessions.add(new DayCharging.Session(fromMin, toMin, charged));
        }
    }

    /** Charges for the hours of the night. */
    void night() {
        leftKwh = Math.min(usableKwh, leftKwh + check.batteryKw() * check.nightHours());
    }

    double leftKwh() {
        return leftKwh;
    }

    double missingKwh() {
        return usableKwh - leftKwh;
    }

    double lowestKwh() {
        return lowestKwh;
    }

    String worstRun() {
        return worstRun;
    }

    List<DayCharging.Session> sessions() {
        return sessions;
    }
}
