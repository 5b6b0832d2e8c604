package org.amberyard.core.duty;

import org.amberyard.core.battery.BatterySpec;

/**
 * Walks a bus through its day and finds how far its battery stays above the reserve.
 *
 * <p>The bus leaves with a full pack. Between runs it is charged when it stands at the yard, if midday charging is asked
 * for. The unit is the day's block, not the run.
 *
 * @param batteryKwhPerHour power stored in the battery while plugged in, kW; zero for no midday charging
 * @param reserveShare share of the usable energy that planning keeps
 */
public record BlockCheck(double batteryKwhPerHour, double reserveShare) {

    /**
     * Outcome of one day.
     *
     * @param usableKwh energy that can be drawn from the full pack on that day, kWh
     * @param needKwh net energy of the day's runs, kWh
     * @param marginKwh energy left above the reserve at the day's lowest point, kWh; negative when the duty fails
     * @param marginKm that margin as distance at the day's consumption, km
     * @param worstRun run at whose end the charge is lowest
     */
    public record Outcome(double usableKwh, double needKwh, double marginKwh, double marginKm, String worstRun) {

        /** True when the bus stays above the reserve all day. */
        public boolean passes() {
            return marginKwh >= 0;
        }

        /** Margin as a share of the usable energy. */
        public double marginShare() {
            return usableKwh > 0 ? marginKwh / usableKwh : 0;
        }
    }

    /** The day of a block with a battery of a health; the day must not be empty. */
    public Outcome of(DayBlock day, BatterySpec battery, double health) {
        double usable = battery.usableKwh(health, day.coldestC());
        double left = usable;
        double lowest = usable;
        String worst = "";
        for (int i = 0; i < day.legs().size(); i++) {
            DayBlock.Leg leg = day.legs().get(i);
            left -= leg.use().batteryKwh();
            if (left < lowest || worst.isEmpty()) {
                lowest = left;
                worst = leg.name();
            }
            left = Math.min(usable, left + chargedKwh(day, i));
        }
        double margin = lowest - reserveShare * usable;
        return new Outcome(usable, day.batteryKwh(), margin, margin * day.km() / day.batteryKwh(), worst);
    }

    private double chargedKwh(DayBlock day, int leg) {
        DayBlock.Leg now = day.legs().get(leg);
        if (!now.yardAfter() || leg + 1 >= day.legs().size()) {
            return 0;
        }
        double standingMin = Math.max(0, day.legs().get(leg + 1).departureMin() - now.arrivalMin());
        return batteryKwhPerHour * standingMin / 60;
    }
}
