package org.amberyard.core.plan;

import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.battery.FullCycleCount;
import org.amberyard.core.battery.PackReplacement;
import org.amberyard.core.duty.EnergyUse;

/**
 * A pack's years on one route.
 *
 * @param battery the pack
 * @param cyclesPerYear full cycles in a year of service
 * @param lastAge whole years to the retirement of the bus, or to the last before the pack is due
 */
record PackService(BatterySpec battery, double cyclesPerYear, int lastAge) {

    static PackService of(BatterySpec battery, EnergyUse year, double busLifeYears) {
        double cyclesPerYear = FullCycleCount.of(year.dischargedKwh(), battery.nominalKwh());
        int age = 0;
        while (age + 1 <= busLifeYears && PackReplacement.due(battery, age + 1, cyclesPerYear * (age + 1)).isEmpty()) {
            age++;
        }
        return new PackService(battery, cyclesPerYear, age);
    }

    /** Present over nominal capacity at an age. */
    double health(int age) {
        return battery.fade().health(age, cyclesPerYear * age);
    }
}
