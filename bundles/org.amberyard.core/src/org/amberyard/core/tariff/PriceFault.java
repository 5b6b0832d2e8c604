package org.amberyard.core.tariff;

import java.math.BigDecimal;

/**
 * A price of energy that is so high that cents may have been meant.
 *
 * @param charge name of the charge
 * @param pricePerKwh its price, money/kWh
 */
public record PriceFault(String charge, double pricePerKwh) {
    private static final int CENT_DIGITS = 2;

    /** Words such as "On-peak energy is 14.8 per kWh, which looks like cents; was 0.148 meant?". */
    public String message() {
        String meant = BigDecimal.valueOf(pricePerKwh).movePointLeft(CENT_DIGITS).stripTrailingZeros().toPlainString();
        return charge + " is " + pricePerKwh + " per kWh, which looks like cents; was " + meant + " meant?";
    }
}
