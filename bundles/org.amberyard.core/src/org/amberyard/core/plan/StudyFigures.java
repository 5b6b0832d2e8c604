package org.amberyard.core.plan;

import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.upkeep.Renewals;

/**
 * Figures that all plans of a study share.
 *
 * @param calibrations upkeep measured over upkeep modelled, by vehicle type
 * @param wear what a year of driving does to a bus
 * @param prices what electricity costs by month and hour
 * @param renewals failures of parts that have been solved
 */
record StudyFigures(UpkeepCalibrations calibrations, BusWear wear, YardPrices prices, Renewals renewals) {

    static StudyFigures of(StudyInput study, DutyTable duty) {
        return of(study, duty, new Renewals());
    }

    /** Those of a variant of the study. */
    StudyFigures anew(StudyInput variant, DutyTable driven) {
        return of(variant, driven, renewals);
    }

    private static StudyFigures of(StudyInput study, DutyTable duty, Renewals renewals) {
        BusWear wear = new BusWear(study.duty());
        return new StudyFigures(UpkeepCalibrations.of(study, duty, wear), wear, new YardPrices(study.depot().metering()), renewals);
    }
}
