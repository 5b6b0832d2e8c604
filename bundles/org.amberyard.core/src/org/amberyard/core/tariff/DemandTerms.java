package org.amberyard.core.tariff;

import java.util.List;
import java.util.Optional;

/**
 * What a demand charge asks in one month.
 *
 * @param charge price and hours
 * @param minimumKw demand billed at least, kW
 * @param ratchet memory of earlier demands
 */
record DemandTerms(ChargeTerms charge, double minimumKw, Optional<Ratchet> ratchet) {

    /** The charge in a month of a contract year; none when no rate is in force. */
    static Optional<DemandTerms> of(DemandCharge charge, int month, int contractYear) {
        return ChargeTerms.of(charge.name(), charge.rates(), month, contractYear)
                .map(terms -> new DemandTerms(terms, charge.minimumKw(), charge.ratchet()));
    }

    /** Demand to be billed for a metered month. */
    BilledDemand billed(MeterMonth month, PeakHistory history, double lossFactor) {
        return BilledDemand.greatest(List.of(
                BilledDemand.measured(charge.hours().peak(month), lossFactor), floor(history, lossFactor)));
    }

    /** Demand that is billed however low the month's own is. */
    BilledDemand floor(PeakHistory history, double lossFactor) {
        BilledDemand minimum = BilledDemand.minimum(minimumKw);
        return ratchet.map(r -> BilledDemand.greatest(
                List.of(minimum, BilledDemand.ratchet(r.share(), history.highest(r), lossFactor)))).orElse(minimum);
    }
}
