package org.amberyard.core.plan;

import java.util.OptionalInt;
import org.amberyard.core.duty.DutyInput;
import org.amberyard.core.duty.EnergyUse;
import org.amberyard.core.upkeep.WearYear;

/** What a year of driving in a place does to a bus: by its months and by the riders on its route. */
final class BusWear {
    private final DrivingMonths months;
    private final MeanRiders riders;

    BusWear(DutyInput duty) {
        this.months = new DrivingMonths(duty.routes());
        this.riders = new MeanRiders(duty);
    }

    /** Wear of a year on a route, or of a bus without one, which drives as all routes together do. */
    WearYear of(TypeUpkeep type, EnergyUse use, double idleHours, OptionalInt route) {
        return type.wear(use, idleHours, months.of(route), riders.kg(route, type.bodyType()));
    }
}
