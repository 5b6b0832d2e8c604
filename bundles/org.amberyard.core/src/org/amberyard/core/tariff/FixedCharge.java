package org.amberyard.core.tariff;

import org.amberyard.core.math.Checks;

/**
 * A price on being served.
 *
 * @param name name on the bill
 * @param price money per month or day; below zero for a credit
 * @param unit {@link BillUnit#MONTH} or {@link BillUnit#DAY}
 * @param years years of the contract
 */
public record FixedCharge(String name, double price, BillUnit unit, ContractYears years) {

    /**
     * @throws IllegalArgumentException when the unit is neither a month nor a day
     */
    public FixedCharge {
        Checks.finite(name, price);
        if (unit != BillUnit.MONTH && unit != BillUnit.DAY) {
            throw new IllegalArgumentException(name + " is charged per " + unit.label() + " but must be per month or day");
        }
    }

    /** A charge per month in all years. */
    public static FixedCharge monthly(String name, double price) {
        return new FixedCharge(name, price, BillUnit.MONTH, ContractYears.ALL);
    }

    /** A charge per day in all years. */
    public static FixedCharge daily(String name, double price) {
        return new FixedCharge(name, price, BillUnit.DAY, ContractYears.ALL);
    }
}
