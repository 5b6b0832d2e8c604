package org.amberyard.core.yard;

import java.util.List;
import org.amberyard.core.charging.PortMix;
import org.amberyard.core.charging.PortOption;
import org.amberyard.core.tariff.BillParts;

/**
 * Ports of a yard with all that they bring with them in a year.
 *
 * @param mix ports and plug swaps
 * @param unused how many of the ports stand unused and switched off, because buses are ready for less money with the
 *            others
 * @param bill the year's bill of charging, base-date prices
 * @param served true when every bus leaves with the charge that it needs, on every day of every year
 */
public record PortChoice(PortMix mix, int unused, BillParts bill, boolean served) {

    /** Ports, swaps and the bill, money per year. */
    public double cost() {
        return mix.cost() + bill.total();
    }

    /** The same with ports more that stand unused: they cost, and plug swaps and bill stay. */
    PortChoice withUnused(int more, List<PortOption> options, int option) {
        return new PortChoice(mix.plus(more, options, option), unused + more, bill, served);
    }

    /** The same known to leave a bus short in some year. */
    PortChoice notServed() {
        return new PortChoice(mix, unused, bill, false);
    }
}
