package org.amberyard.core.tariff;

/**
 * Money of a bill by what it follows: each part may rise with prices of its own. Percentage riders and taxes stand with the
 * part on which they fall.
 *
 * @param energy follows the energy
 * @param demand follows the demand
 * @param fixed follows neither
 */
public record BillParts(double energy, double demand, double fixed) {

    /** No money. */
    public static final BillParts ZERO = new BillParts(0, 0, 0);

    /** Money of all parts. */
    public double total() {
        return energy + demand + fixed;
    }

    /** Both together. */
    public BillParts plus(BillParts other) {
        return new BillParts(energy + other.energy, demand + other.demand, fixed + other.fixed);
    }

    /** Each part times a factor. */
    public BillParts times(double factor) {
        return new BillParts(factor * energy, factor * demand, factor * fixed);
    }

    /** The parts with another total, the difference taken by the greatest. */
    BillParts withTotal(double total) {
        double greatest = Math.max(Math.abs(energy), Math.max(Math.abs(demand), Math.abs(fixed)));
        if (Math.abs(energy) == greatest) {
            return new BillParts(total - demand - fixed, demand, fixed);
        }
        return Math.abs(demand) == greatest ? new BillParts(energy, total - energy - fixed, fixed)
                : new BillParts(energy, demand, total - energy - demand);
    }
}
