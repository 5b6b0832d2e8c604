package org.amberyard.core.duty;

import org.amberyard.core.battery.BatterySpec;

/**
 * Physics of a battery-electric vehicle type.
 *
 * @param name name of the type
 * @param body body, driveline and cabin
 * @param recovery braking energy recovery
 * @param heater cabin heater
 * @param battery the pack
 */
public record ElectricSpec(String name, VehicleBody body, BrakeRecovery recovery, Heater heater, BatterySpec battery)
        implements VehicleSpec {
}
