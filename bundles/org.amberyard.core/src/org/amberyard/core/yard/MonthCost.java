package org.amberyard.core.yard;

import org.amberyard.core.tariff.Bill;
import org.amberyard.core.tariff.BillParts;
import org.amberyard.core.tariff.MeterMonth;
import org.amberyard.core.tariff.PeakHistory;

/** What charging costs in the proportion of prices of the yard's year: money of the base date, demand by its index over energy. */
final class MonthCost {
    private final YardInput yard;

    MonthCost(YardInput yard) {
        this.yard = yard;
    }

    double of(BillParts parts) {
        return parts.energy() + yard.demandIndex() * parts.demand() + parts.fixed();
    }

    /** Cost of a month by itself, as after months without demand. */
    double of(MonthLoad month) {
        return of(month.metered(yard.metering().shared()));
    }

    /** The same of what the meter of charging counts. */
    double of(MeterMonth month) {
        return of(Bill.of(yard.metering().tariff(), yard.contractYear(), month, PeakHistory.NONE).parts());
    }
}
