package org.amberyard.core.plan;

import org.amberyard.core.air.GreenhouseGas;
import org.amberyard.core.yard.YardYear;

/**
 * Greenhouse gas of one year of a plan, kg CO2e.
 *
 * @param tailpipeKg from engines
 * @param heaterKg from fuel-fired heaters
 * @param gridKg at the power plants
 */
public record AirYear(double tailpipeKg, double heaterKg, double gridKg) {

    /** All of it, kg CO2e. */
    public double totalKg() {
        return tailpipeKg + heaterKg + gridKg;
    }

    static AirYear of(StudyInput study, FleetHistory fleet, YardYear yard, int year) {
        GreenhouseGas air = study.air();
        double tailpipe = 0;
        double heater = 0;
        for (VehicleYear record : fleet.inYear(year)) {
            tailpipe += study.types().get(record.vehicle().type()).engine()
                    .map(e -> air.tailpipeKg(e.fuel(), record.use().fuelL(), record.use().km())).orElse(0.0);
            heater += air.heaterKg(record.use().heaterFuelL());
        }
        return new AirYear(tailpipe, heater, air.gridKg(yard.neededKwh(), year));
    }
}
