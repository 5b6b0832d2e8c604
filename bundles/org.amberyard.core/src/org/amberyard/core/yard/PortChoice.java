package org.amberyard.core.yard;

import org.amberyard.core.charging.PortMix;
import org.amberyard.core.tariff.BillParts;

/**
 * Ports of a yard with all that they bring with them in a year.
 *
 * @param mix ports and plug swaps
 * @param bill the year's bill of charging, base-date prices
 * @param served true when every bus leaves with the charge that it needs, on every day of every year
 */
public record PortChoice(PortMix mix, BillParts bill, boolean served) {

    /** Ports, swaps and the bill, money per year. */
    public double cost() {
        return mix.cost() + bill.total();
    }

    /** The same known to leave a bus short in some year. */
    PortChoice notServed() {
        return new PortChoice(mix, bill, false);
    }
}
