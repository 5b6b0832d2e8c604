package org.amberyard.core.plan;

import org.amberyard.core.duty.DutyTable;

/**
 * Figures that all plans of a study share.
 *
 * @param calibrations upkeep measured over upkeep modelled, by vehicle type
 * @param wear what a year of driving does to a bus
 * @param prices what electricity costs by month and hour
 */
record StudyFigures(UpkeepCalibrations calibrations, BusWear wear, YardPrices prices) {

    static StudyFigures of(StudyInput study, DutyTable duty) {
        BusWear wear = new BusWear(study.duty());
        return new StudyFigures(UpkeepCalibrations.of(study, duty, wear), wear, new YardPrices(study.depot().metering()));
    }
}
