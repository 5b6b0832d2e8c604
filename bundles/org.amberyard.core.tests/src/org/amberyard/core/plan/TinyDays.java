package org.amberyard.core.plan;

import java.util.List;
import org.amberyard.core.duty.DayBlock;
import org.amberyard.core.duty.EnergyCauses;
import org.amberyard.core.duty.EnergyUse;

/** Days in round numbers. */
final class TinyDays {
    private TinyDays() {
    }

    static DayBlock of(DayBlock.Leg... legs) {
        return new DayBlock(List.of(legs), 15);
    }

    /** A run of an hour and 40 km that ends at the yard. */
    static DayBlock.Leg leg(String name, double departureMin, double batteryKwh, double packC) {
        return new DayBlock.Leg(name, departureMin, departureMin + 60, true, packC,
                new EnergyUse(40, 1, batteryKwh, 0, EnergyCauses.ZERO, 0, 0, 0, 0), packC, 0);
    }
}
