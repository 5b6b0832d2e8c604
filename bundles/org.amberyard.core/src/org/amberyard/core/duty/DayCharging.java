package org.amberyard.core.duty;

import java.util.List;

/**
 * What one bus takes from the yard's ports on one day.
 *
 * @param midday charging between runs
 * @param nightKwh energy into the battery in the night after, kWh
 * @param nightHeatKwh energy for heat while plugged in at night, behind the port, kWh
 * @param preheatKw highest power for heat before a departure, behind the port, kW
 */
public record DayCharging(List<Session> midday, double nightKwh, double nightHeatKwh, double preheatKw) {

    /** Nothing charged. */
    public static final DayCharging NONE = new DayCharging(List.of(), 0, 0, 0);

    /**
     * Charging between two runs, spread evenly over the time that the bus stands.
     *
     * @param fromMin start, minutes after midnight
     * @param toMin end, minutes after midnight
     * @param batteryKwh energy into the battery, kWh
     */
    public record Session(double fromMin, double toMin, double batteryKwh) {

        /** Power into the battery, kW. */
        public double batteryKw() {
            return batteryKwh / ((toMin - fromMin) / 60);
        }
    }

    public DayCharging {
        midday = List.copyOf(midday);
    }
}
