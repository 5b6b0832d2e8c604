package org.amberyard.core.consumption;

import java.util.OptionalDouble;
import org.amberyard.core.math.Checks;

/**
 * What is settled before a curve is fitted.
 *
 * @param mildC temperature below which driving takes more and the cabin is heated, °C
 * @param coolingFromC temperature above which the cabin is cooled, °C
 * @param heaterKw largest electric power of the heater, kW; the limit of heating where the logs show none
 * @param coolCapKw largest power of cooling, kW
 * @param knownRisePerK rise of the energy per distance per degree below mild, 1/K, when it is known from elsewhere; needed
 *     for logs that were all driven at the same mean speed
 */
public record FitSettings(double mildC, double coolingFromC, double heaterKw, double coolCapKw,
        OptionalDouble knownRisePerK) {

    /** @throws IllegalArgumentException when a figure is out of its range; the message names it */
    public FitSettings {
        Checks.notNegative("Heater, kW,", heaterKw);
        Checks.notNegative("Cooling limit, kW,", coolCapKw);
        if (!(coolingFromC >= mildC)) {
            throw new IllegalArgumentException("Cooling starts at " + coolingFromC
                    + " °C but must not start below the mild temperature of " + mildC + " °C");
        }
        knownRisePerK.ifPresent(rise -> Checks.notNegative("Rise in the cold, 1/K,", rise));
    }
}
