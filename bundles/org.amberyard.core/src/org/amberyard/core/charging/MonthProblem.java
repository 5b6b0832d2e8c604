package org.amberyard.core.charging;

import java.util.List;

/**
 * The least-cost problem of a month.
 *
 * @param stretches stretches of days of the month
 * @param demandPrices price of each demand charge, money/kW, riders and taxes included
 * @param demandFloorsKw demand that each charge bills at least, kW (a ratchet, or the demand of days without charging)
 * @param siteLimitKw demand that must not be exceeded, kW; infinite where nothing limits it
 */
public record MonthProblem(List<StretchProblem> stretches, double[] demandPrices, double[] demandFloorsKw,
        double siteLimitKw) {

    public MonthProblem {
        stretches = List.copyOf(stretches);
    }
}
