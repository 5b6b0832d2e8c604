package org.amberyard.core.plan;

import java.util.List;
import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.duty.BlockCheck;
import org.amberyard.core.duty.DayBlock;

/**
 * State of charge of an electric bus through the day of a trip and the night after it.
 *
 * @param study the study
 * @param battery its pack
 * @param health present over nominal capacity of the pack
 * @param batteryKw power into the battery that it can count on, kW
 */
record TripCharge(StudyInput study, BatterySpec battery, double health, double batteryKw) {

    /**
     * A day that starts with a full pack.
     *
     * @param lowestShare least share of the usable energy above what must be left; negative where the day fails
     * @param morningShare state of charge the next morning
     */
    record Day(double lowestShare, double morningShare) {
    }

    static TripCharge of(StudyInput study, Vehicle bus, double batteryKw) {
        BatterySpec battery = study.types().get(bus.type()).electric().orElseThrow().battery();
        return new TripCharge(study, battery, bus.health(), batteryKw);
    }

    double usableKwh() {
        return battery.usableKwh(health);
    }

    /** The day of a trip, charged at night in the hours of the window between its end and the next departure. */
    Day day(DayBlock block, double nextDepartureMin) {
        BlockCheck check = RouteFitting.check(study, batteryKw, study.middayCharging());
        List<BlockCheck.Moment> moments = check.moments(block, battery, health, nextDepartureMin);
        int last = moments.size() - 1;
        double lowest = moments.subList(0, last).stream().mapToDouble(m -> m.chargeShare() - m.floorShare()).min().orElseThrow();
        return new Day(lowest, moments.get(last).chargeShare());
    }

    /**
     * State of charge that a day must start with to stay above the reserve: full, less what a full pack keeps above it. A bus
     * that starts lower takes in no less between its runs, so this is never too little. Where even a full pack falls below
     * the reserve the trip is not to blame, and full is enough.
     */
    double startShare(DayBlock next) {
        return Math.min(1, 1 - day(next, next.nextMorningMin()).lowestShare());
    }
}
