package org.amberyard.core.tariff;

import java.util.Optional;

/**
 * A line of a bill.
 *
 * @param component part of the bill
 * @param label what is charged, in words
 * @param quantity quantity, in its unit
 * @param unit unit of the quantity
 * @param price price per unit; a share where the unit is money
 * @param parts amount, by what it follows
 * @param demand what set the demand, for lines on demand
 */
public record BillLine(BillComponent component, String label, double quantity, BillUnit unit, double price,
        BillParts parts, Optional<BilledDemand> demand) {

    /** Amount of the line. */
    public double amount() {
        return parts.total();
    }

    /** True for a quantity at a price, not a percentage of others or what they lack to a minimum. */
    boolean charge() {
        return unit != BillUnit.MONEY && component != BillComponent.MINIMUM;
    }

    /** The same line in other words. */
    BillLine named(String other) {
        return new BillLine(component, other, quantity, unit, price, parts, demand);
    }

    /** The line at other prices. */
    BillLine at(BillIndex index) {
        BillParts risen = index.of(parts);
        double rise = amount() == 0 ? 1 : risen.total() / amount();
        return new BillLine(component, label, quantity, unit, rise * price, risen, demand);
    }

    /** The moment that set the demand, for lines on demand. */
    public Optional<PeakMoment> peak() {
        return demand.flatMap(BilledDemand::peak);
    }
}
