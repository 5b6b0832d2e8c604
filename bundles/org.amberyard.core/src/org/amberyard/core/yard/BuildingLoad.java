package org.amberyard.core.yard;

import java.util.List;

/**
 * Load of the building and everything else behind the yard's service that is no charging, by month.
 *
 * @param weekdays mean weekday of each month, kW by step
 * @param freeDays mean weekend day or holiday of each month, kW by step
 * @param peakDays day of the highest demand of each month, kW by step
 */
public record BuildingLoad(List<double[]> weekdays, List<double[]> freeDays, List<double[]> peakDays) {

    public BuildingLoad {
        weekdays = List.copyOf(weekdays);
        freeDays = List.copyOf(freeDays);
        peakDays = List.copyOf(peakDays);
    }
}
