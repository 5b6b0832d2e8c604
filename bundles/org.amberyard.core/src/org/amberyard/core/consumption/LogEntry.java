package org.amberyard.core.consumption;

import org.amberyard.core.math.Checks;

/**
 * What an electric bus was seen to use over a trip, a day or a month.
 *
 * @param km distance, km; above 0
 * @param hours time in service with the cabin held warm or cool, h; 0 when unknown
 * @param energyKwh energy from the battery, kWh; above 0
 * @param outsideC mean outside temperature, °C
 */
public record LogEntry(double km, double hours, double energyKwh, double outsideC) {

    /** @throws IllegalArgumentException when a figure is out of its range; the message names it */
    public LogEntry {
        Checks.positive("Distance of a log entry, km,", km);
        Checks.notNegative("Hours of a log entry, h,", hours);
        Checks.positive("Energy of a log entry, kWh,", energyKwh);
        Checks.finite("Outside temperature of a log entry, °C,", outsideC);
    }

    /** Energy per distance, kWh/km. */
    public double kwhPerKm() {
        return energyKwh / km;
    }
}
