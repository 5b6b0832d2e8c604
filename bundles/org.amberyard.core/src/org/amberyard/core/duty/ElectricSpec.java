package org.amberyard.core.duty;

import java.util.Optional;
import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.consumption.ConsumptionCurve;

/**
 * Physics of a battery-electric vehicle type.
 *
 * @param name name of the type
 * @param body body, driveline and cabin
 * @param recovery braking energy recovery
 * @param heater cabin heater
 * @param battery the pack
 * @param curve consumption curve for routes that go by it, if the type has one
 */
public record ElectricSpec(String name, VehicleBody body, BrakeRecovery recovery, Heater heater, BatterySpec battery,
        Optional<ConsumptionCurve> curve) implements VehicleSpec {

    /** The same with another heater. */
    public ElectricSpec withHeater(Heater other) {
        return new ElectricSpec(name, body, recovery, other, battery, curve);
    }
}
