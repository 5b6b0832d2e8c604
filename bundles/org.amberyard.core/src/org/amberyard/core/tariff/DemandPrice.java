package org.amberyard.core.tariff;

/**
 * The price of a demand charge around an expected demand.
 *
 * @param terms the charge
 * @param price price of one more kW at the meter, money/kW
 * @param billedKw demand that is expected to be billed, kW
 * @param fromKw demand from which on the price is asked where it is lower than before, kW; else 0
 */
record DemandPrice(DemandTerms terms, double price, double billedKw, double fromKw) {

    /** The price of a block of a charge. */
    static DemandPrice of(DemandTerms terms, int block, double billedKw, double factor) {
        BlockPrices prices = terms.charge().prices();
        PriceBlock priced = prices.blocks().get(block);
        return new DemandPrice(terms, factor * priced.price(), billedKw, prices.rising() ? 0 : priced.from());
    }

    /** The same with another price. */
    DemandPrice with(double otherPrice) {
        return new DemandPrice(terms, otherPrice, billedKw, fromKw);
    }

    /** Demand below which the charge does not fall, by minimum, ratchet or block, kW at the meter. */
    double floorKw(PeakHistory history, double lossFactor) {
        return Math.max(fromKw, terms.floor(history, lossFactor).kw()) / lossFactor;
    }

    /** True when both bill the same demand, however high it is. */
    boolean countsAs(DemandPrice other) {
        return terms.charge().hours().sameAs(other.terms.charge().hours());
    }

    /** True when it bills nothing but what is measured. */
    boolean measuredOnly() {
        return terms.minimumKw() == 0 && terms.ratchet().isEmpty() && fromKw == 0;
    }
}
