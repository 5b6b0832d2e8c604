package org.amberyard.core.tariff;

/**
 * Prices of the parts of a bill over those of the base date, constant money.
 *
 * @param energy of what follows the energy
 * @param demand of what follows the demand
 * @param fixed of what follows neither, the minimum bill too
 */
public record BillIndex(double energy, double demand, double fixed) {

    /** Money at base-date prices under the index. */
    public BillParts of(BillParts parts) {
        return new BillParts(energy * parts.energy(), demand * parts.demand(), fixed * parts.fixed());
    }
}
