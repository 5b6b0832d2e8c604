package org.amberyard.core.tariff;

import org.amberyard.core.math.Checks;

/**
 * A block of a charge.
 *
 * @param from where the block starts: energy of the month, kWh, or billed demand, kW
 * @param fromPerKw what the start gains with each kW of billed demand, kWh/kW: blocks by hours of use; 0 for demand charges
 * @param price price within the block, money per kWh or kW
 */
public record PriceBlock(double from, double fromPerKw, double price) {

    public PriceBlock {
        Checks.notNegative("start of a block", from);
        Checks.notNegative("start of a block per kW", fromPerKw);
        Checks.finite("price of a block", price);
    }

    /** A block whose start does not depend on the demand. */
    public PriceBlock(double from, double price) {
        this(from, 0, price);
    }

    /** Where the block starts at a billed demand. */
    double start(double billedKw) {
        return from + fromPerKw * billedKw;
    }

    /** True when the block starts above another at any demand above 0. */
    boolean above(PriceBlock other) {
        return from >= other.from && fromPerKw >= other.fromPerKw && from + fromPerKw > other.from + other.fromPerKw;
    }
}
