package org.amberyard.core.duty;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.amberyard.core.math.Checks;

/**
 * What a vehicle of a type was measured to use on a route.
 *
 * @param route place of the route in the duty input
 * @param vehicle place of the vehicle type in the duty input
 * @param month month of the measurement, 0 for January; empty when not told
 * @param outsideC mean outside temperature, °C; empty when not told
 * @param km distance driven, km; above 0
 * @param amount electric energy in kWh, or fuel in L, by the kind of vehicle; above 0
 */
public record MeasuredUse(int route, int vehicle, OptionalInt month, OptionalDouble outsideC, double km, double amount) {

    /** @throws IllegalArgumentException when distance or amount is not above zero */
    public MeasuredUse {
        Checks.positive("Measured distance, km,", km);
        Checks.positive("Measured energy, kWh or L,", amount);
    }
}
