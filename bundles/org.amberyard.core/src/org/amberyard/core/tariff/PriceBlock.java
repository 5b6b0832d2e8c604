package org.amberyard.core.tariff;

import org.amberyard.core.math.Checks;

/**
 * A block of a charge.
 *
 * @param from where the block starts: energy of the month, kWh, or billed demand, kW
 * @param price price within the block, money per kWh or kW
 */
public record PriceBlock(double from, double price) {

    public PriceBlock {
        Checks.notNegative("start of a block", from);
        Checks.finite("price of a block", price);
    }
}
