package org.amberyard.core.depot;

/** A tariff of the charging meter. */
public sealed interface TariffInput permits FlatTariff {

    /** Yearly charges for energy and monthly demands, base-date money, taxes included. */
    BillParts year(double energyKwh, double sumOfMonthlyPeaksKw);

    /**
     * A year's bill by component.
     *
     * @param energy charges per energy, riders included
     * @param demand charges per demand
     * @param fixed monthly charges
     */
    record BillParts(double energy, double demand, double fixed) {
    }
}
