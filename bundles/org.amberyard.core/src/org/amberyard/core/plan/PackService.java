package org.amberyard.core.plan;

import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.battery.PackReplacement;
import org.amberyard.core.battery.PackWear;
import org.amberyard.core.duty.PackYears.PackYear;

/**
 * A pack's years on one route, from new to its own limits; that the route may become too long for it does not end them here.
 *
 * @param battery the pack
 * @param year a year of service
 * @param lastAge whole years to the retirement of the bus, or to the last before the pack is due
 */
record PackService(BatterySpec battery, PackYear year, int lastAge) {

    static PackService of(BatterySpec battery, PackYear year, double busLifeYears) {
        int age = 0;
        while (age + 1 <= busLifeYears && PackReplacement.due(battery, aged(year, age + 1), 0).isEmpty()) {
            age++;
        }
        return new PackService(battery, year, age);
    }

    private static PackWear aged(PackYear year, int age) {
        return PackWear.NEW.after(year.rate(), year.fullCycles(), age);
    }

    /** Present over nominal capacity at an age. */
    double health(int age) {
        return aged(year, age).health();
    }
}
