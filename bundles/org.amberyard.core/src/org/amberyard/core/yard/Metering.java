package org.amberyard.core.yard;

import org.amberyard.core.tariff.Tariff;

/**
 * How charging is metered.
 *
 * @param tariff tariff of the meter
 * @param shared true when the building is behind the same meter
 */
public record Metering(Tariff tariff, boolean shared) {
}
